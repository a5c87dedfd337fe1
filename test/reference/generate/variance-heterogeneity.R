# How unlike variances are, by the moments of ln s² as limma's fitFDist takes them: scaled F with d0 degrees of freedom, so
# that ln σ² has variance trigamma(d0/2). Once with equal degrees of freedom, where the restricted likelihood of ln s² has its
# maximum at the same place, and once with unequal ones, where it weighs otherwise. limma is Debian's r-bioc-limma.
#   Rscript test/reference/generate/variance-heterogeneity.R > test/reference/varcomp/variance-heterogeneity-r.json
suppressMessages(library(limma))

set.seed(1)
meters <- 60
drawn <- function(df) signif(exp(rnorm(meters, log(0.03), 0.5))^2 * rchisq(meters, df) / df, 6)
unequal <- rep(c(2, 3, 5, 8, 12, 20), 10)
equal <- rep(8, meters)

number <- function(x) paste(formatC(x, digits = 15, format = "g", width = 1), collapse = ", ")
part <- function(name, df) {
  variance <- drawn(df)
  fit <- fitFDist(variance, df)
  sprintf(' "%s": { "variance": [%s], "df": [%s], "scale": %s, "df2": %s }',
    name, number(variance), number(df), number(fit$scale), number(fit$df2))
}
cat(sprintf('{
 "name": "Heterogeneity of variances by the moments of their logarithms, by limma",
 "source": "computed: R %s.%s, limma %s; test/reference/generate/variance-heterogeneity.R",
 "tolerance": "limma ends its Newton steps at a step below 1e-8",
%s,
%s
}
', R.version$major, R.version$minor, packageVersion("limma"),
  part("equal", equal), part("unequal", unequal)))
