# Restricted maximum likelihood with lme4 and nlme, and the small-sample adjusted error and df of pbkrtest, on an unbalanced
# log of six fills. Delivery b of fill f: mass = b_f * turns + error, variance of the error proportional to turns; divided by
# sqrt(turns) that is an ordinary mixed model with one random slope.
#   Rscript test/reference/generate/mixed-models.R > test/reference/varcomp/mixed-models-r.json
suppressMessages({library(lme4); library(nlme); library(pbkrtest)})
set.seed(20260401)
n <- c(3, 5, 2, 6, 4, 3)
fill <- rep(seq_along(n), n)
turns <- sample(c(15, 20, 30), sum(n), replace = TRUE)
delivery <- 0.3 * (1 + rnorm(length(n), 0, 0.025))
mass <- round(delivery[fill] * turns + 0.02 * sqrt(turns) * rnorm(sum(n)), 3)
d <- data.frame(y = mass / sqrt(turns), x = sqrt(turns), fill = factor(fill))

fit4 <- lmer(y ~ 0 + x + (0 + x | fill), d, REML = TRUE,
             control = lmerControl(optimizer = "nloptwrap", optCtrl = list(xtol_abs = 1e-14, ftol_abs = 1e-14)))
v <- as.data.frame(VarCorr(fit4))
fitn <- lme(y ~ 0 + x, d, random = ~ 0 + x | fill, method = "REML",
            control = lmeControl(tolerance = 1e-12, msTol = 1e-14, opt = "optim", reltol = 1e-14))
vn <- as.numeric(VarCorr(fitn)[, "Variance"])

number <- function(x) paste(format(x, digits = 15, trim = TRUE), collapse = ", ")
cat(sprintf('{
 "name": "Unbalanced fills of one meter, by lme4, nlme and pbkrtest",
 "source": "computed: R %s.%s, lme4 %s, nlme %s, pbkrtest %s; test/reference/generate/mixed-models.R",
 "tolerance": "lme4 and nlme stop at about 7 digits of a variance",
 "data": {
  "fill": [%s],
  "turns": [%s],
  "mass": [%s]
 },
 "lme4": { "mean": %s, "between_variance": %s, "within_variance": %s, "standard_error": %s },
 "nlme": { "mean": %s, "between_variance": %s, "within_variance": %s },
 "pbkrtest": { "adjusted_standard_error": %s, "df": %s }
}
', R.version$major, R.version$minor, packageVersion("lme4"), packageVersion("nlme"), packageVersion("pbkrtest"),
  number(fill), number(turns), number(mass),
  number(fixef(fit4)), number(v$vcov[1]), number(v$vcov[2]), number(sqrt(as.numeric(vcov(fit4)))),
  number(fixef(fitn)), number(vn[1]), number(vn[2]),
  number(sqrt(as.numeric(vcovAdj(fit4)))), number(get_Lb_ddf(fit4, 1))))
