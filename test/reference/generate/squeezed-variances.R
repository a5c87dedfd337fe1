# Moderated variances by limma: the inverse of the trigamma function, the prior that a set of variances gives (squeezeVar
# without trend or robustness), and each variance squeezed towards it. Votes among others with no declared heterogeneity of
# their own come to the same prior, given the centre and variance that limma finds. limma is Debian's r-bioc-limma.
#   Rscript test/reference/generate/squeezed-variances.R > test/reference/varcomp/squeezed-variances-r.json
suppressMessages(library(limma))

y <- c(1, 2, 1 / 2, 4, 0.01, 100)
s2 <- c(0.021, 0.034, 0.0125, 0.0481, 0.019, 0.0093, 0.06)^2
df <- c(8, 8, 3, 2, 5, 12, 1)
squeezed <- squeezeVar(s2, df)

number <- function(x) paste(formatC(x, digits = 15, format = "g", width = 1), collapse = ", ")
cat(sprintf('{
 "name": "Inverse trigamma function and squeezed variances, by limma",
 "source": "computed: R %s.%s, limma %s; test/reference/generate/squeezed-variances.R",
 "tolerance": "limma ends its Newton steps at a step below 1e-8",
 "data": { "y": [%s], "variance": [%s], "df": [%s] },
 "trigammaInverse": [%s],
 "squeezeVar": { "prior_variance": %s, "prior_df": %s, "squeezed": [%s] }
}
', R.version$major, R.version$minor, packageVersion("limma"),
  number(y), number(s2), number(df), number(trigammaInverse(y)),
  number(squeezed$var.prior), number(squeezed$df.prior), number(squeezed$var.post)))
