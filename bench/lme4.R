# Time of the same refits with lme4, for the comparison in bench/README.md: eight fills of five catches.
#   Rscript bench/lme4.R
suppressMessages(library(lme4))
set.seed(1)
fill <- factor(rep(1:8, each = 5))
draw <- function() 0.3 * (1 + rep(rnorm(8, 0, 0.03), each = 5) + rnorm(40, 0, 0.015))
model <- lmer(y ~ 1 + (1 | fill), data.frame(y = draw(), fill = fill))
n <- 200
full <- system.time(for (i in 1:n) lmer(y ~ 1 + (1 | fill), data.frame(y = draw(), fill = fill)))[["elapsed"]]
again <- system.time(for (i in 1:n) refit(model, draw()))[["elapsed"]]
cat(sprintf("R %s.%s, lme4 %s\n", R.version$major, R.version$minor, packageVersion("lme4")))
cat(sprintf("lmer: %.1f us a fit; refit: %.1f us a fit\n", 1e6 * full / n, 1e6 * again / n))
