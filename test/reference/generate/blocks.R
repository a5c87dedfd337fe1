# Products within complete blocks, for test/questions/trial-plan.test.ts; simulated with R 4.2.2, 40,000 trials a row. Standard
# deviation 2 %, one product 5 % off (or, for equivalence, none): median half-width in percent, pooled by Tukey and separate by
# Bonferroni; chance of finding the 5 % of one pair by Tukey, Dunnett, separate; chance that the 90 % interval lies within ± 5 %.
#   Rscript test/reference/generate/blocks.R
source("test/reference/generate/common.R")
set.seed(20261129)
trials <- 40000
# Dunnett's two-sided critical value for k against one, from the double integral that defines it.
dunnett <- function(k, df) {
  z <- seq(-9, 9, by = 0.05); s <- exp(seq(-6, 1.6, by = 0.02)); w <- 2 * df * s^2 * dchisq(df * s^2, df) * 0.02
  inner <- function(t) sapply(s, function(one) sum(dnorm(z) * (pnorm(sqrt(2) * t * one - z) - pnorm(-sqrt(2) * t * one - z))^k) * 0.05)
  uniroot(function(t) sum(w * (1 - inner(t))) - 0.05, c(1.5, 12), tol = 1e-9)$root
}
row <- function(P, B, equivalence) {
  y <- array(rnorm(trials * B * P, 0, 0.02), c(trials, B, P))
  e <- y
  blocks <- apply(y, c(1, 2), mean); products <- apply(y, c(1, 3), mean); all <- rowMeans(blocks)
  for (j in 1:P) e[, , j] <- y[, , j] - blocks - products[, j] + all
  df <- (B - 1) * (P - 1)
  se <- sqrt(rowSums(e^2) / df * 2 / B)
  d <- y[, , 1] - y[, , 2]
  difference <- rowMeans(d)
  own <- sqrt(rowSums((d - difference)^2) / (B - 1) / B)
  tukey <- qtukey(0.95, P, df) / sqrt(2); each <- qt(1 - 0.05 / (P * (P - 1)), B - 1)
  show(sprintf("%d products, %d blocks: median half-widths, percent", P, B), 100 * c(median(tukey * se), median(each * own)))
  off <- abs(difference + 0.05)
  show("  5 % found by Tukey, Dunnett, separate", c(mean(off > tukey * se), mean(off > dunnett(P - 1, df) * se), mean(off > each * own)))
  # "Separate" tests equivalence on the pair's own standard error.
  if (equivalence) show("  shown equal within 5 %: pooled, separate",
    c(mean(abs(difference) + qt(0.95, df) * se < 0.05), mean(abs(difference) + qt(0.95, B - 1) * own < 0.05)))
}
for (one in list(c(3, 3, 1), c(3, 4, 1), c(3, 5, 0), c(3, 6, 1), c(4, 3, 1), c(4, 6, 1))) row(one[1], one[2], one[3] == 1)
