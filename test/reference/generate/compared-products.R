# Two products and three groups, for test/statistics/equivalence-power.test.ts and test/statistics/family-wise-error.test.ts;
# simulated with R 4.2.2, 20,000 trials a figure (error up to ± 0.007, two standard errors; groups 8,000, with a common spread 40,000). Products: k fills of 3 catches each,
# catch scatter 1.5 %. Groups: no true difference.
#   Rscript test/reference/generate/compared-products.R
source("test/reference/generate/common.R")
set.seed(20260925)
trials <- 20000
draw <- function(k, sd, mean = 0) matrix(rnorm(trials * k, mean, sd), trials)
moments <- function(x) list(m = rowMeans(x), v = rowSums((x - rowMeans(x))^2) / (ncol(x) - 1), n = ncol(x))
welch <- function(a, b) {
  va <- a$v / a$n; vb <- b$v / b$n
  list(d = a$m - b$m, se = sqrt(va + vb), df = (va + vb)^2 / (va^2 / (a$n - 1) + vb^2 / (b$n - 1)))
}
both <- function(spread, k, difference) {
  sd <- sqrt(spread^2 + 0.015^2 / 3)
  list(moments(draw(k, sd, difference)), moments(draw(k, sd)))
}
for (one in list(c(.01, 2), c(.01, 3), c(.02, 3), c(.02, 4), c(.02, 6), c(.04, 6), c(.04, 10))) {
  p <- both(one[1], one[2], 0.05)
  w <- welch(p[[1]], p[[2]])
  pooled <- sqrt((p[[1]]$v + p[[2]]$v) / 2 * 2 / one[2])
  show(sprintf("5 %% found, spread %g, %d fills: Welch, pooled", one[1], one[2]),
       c(mean(abs(w$d) > qt(0.975, w$df) * w$se), mean(abs(w$d) > qt(0.975, 2 * one[2] - 2) * pooled)))
}
for (one in list(c(.02, .05, 3), c(.02, .05, 4), c(.02, .05, 6), c(.04, .05, 6), c(.04, .05, 10), c(.02, .03, 4), c(.02, .03, 6), c(.02, .03, 10))) {
  w <- do.call(welch, both(one[1], one[3], 0))
  show(sprintf("shown equal, spread %g, margin %g, %d fills", one[1], one[2], one[3]), mean(abs(w$d) + qt(0.95, w$df) * w$se < one[2]))
}
trials <- 8000
# R's ptukey has few right digits below 10 degrees of freedom, but near 5 % as many as these shares.
any.difference <- function(sizes, sds, common = FALSE) {
  g <- Map(function(n, sd) moments(draw(n, sd)), sizes, sds)
  df <- sum(sizes) - 3
  s2 <- Reduce(`+`, Map(function(one) one$v * (one$n - 1), g)) / df
  # What cannot be found has no need of ptukey, which is slow: |t| below 2.3 has p above 5 % for any degrees of freedom.
  pairs <- combn(3, 2)
  if (common) {
    t <- apply(pairs, 2, function(i) abs(g[[i[1]]]$m - g[[i[2]]]$m) / sqrt(s2 * sum(1 / sizes[i])))
    return(mean(apply(t, 1, max) > qtukey(0.95, 3, df) / sqrt(2)))
  }
  p <- apply(pairs, 2, function(i) {
    w <- welch(g[[i[1]]], g[[i[2]]])
    t <- abs(w$d) / w$se
    far <- t > 2.3
    ifelse(far, replace(t, far, ptukey(sqrt(2) * t[far], 3, rep_len(w$df, trials)[far], lower.tail = FALSE)), 1)
  })
  mean(apply(p, 1, min) < 0.05)
}
show("Games-Howell, alike, 3 3 3", any.difference(c(3, 3, 3), c(1, 1, 1)))
show("Games-Howell, spreads 1 2 4, sizes 4 4 4", any.difference(c(4, 4, 4), c(1, 2, 4)))
show("Games-Howell, spreads 1 2 4, sizes 6 4 3", any.difference(c(6, 4, 3), c(1, 2, 4)))
trials <- 40000
show("Tukey-Kramer, spreads 1 2 4, sizes 6 4 3", any.difference(c(6, 4, 3), c(1, 2, 4), TRUE))
