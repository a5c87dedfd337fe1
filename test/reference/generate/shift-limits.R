# Limits of the averaged evidence of a lasting shift (moved-meter.R), for test/statistics/shift-evidence-limit.test.ts; simulated
# with R 4.2.2, 200,000 steady series a prior. Of .030 over 4 to 12 values each gets a share in proportion to their number: the
# limit is what so many of all series pass then for the first time, of those in which the newest value was never found to differ
# (two-sided p of .002, from the third value on, or the second with a prior).
# A limit of 4 values rests on 333 series and errs by some 5 %, one of 12 on 1,000 (3 %).
#   Rscript test/reference/generate/shift-limits.R
source("test/reference/generate/common.R")
set.seed(20261129)
series <- 200000
for (nu0 in c(0, 1, 2, 3, 5, 10, 30)) {
  y <- matrix(rnorm(series * 12), series)
  lent <- if (nu0 > 0) rchisq(series, nu0) else numeric(series)
  left <- rep(TRUE, series)
  differs <- function(n) {
    earlier <- y[, 1:(n - 1), drop = FALSE]
    df <- nu0 + n - 2
    if (df < 1 || (n == 2 && nu0 < 1)) return(logical(series))
    s2 <- (lent + rowSums((earlier - rowMeans(earlier))^2)) / df
    2 * pt(-abs(y[, n] - rowMeans(earlier)) / sqrt(s2 * (1 + 1 / (n - 1))), df) <= 0.002
  }
  for (n in 2:3) left <- left & !differs(n)
  limits <- sapply(4:12, function(n) {
    z <- y[, 1:n] - rowMeans(y[, 1:n])
    squares <- lent + rowSums(z^2)
    part <- z[, 1]; S <- 0
    for (f in 1:(n - 2)) {
      if (f > 1) part <- part + z[, f]
      m <- f * (n - f) / n; G <- 2 * m
      S <- S + (1 + G)^-0.5 * (1 - part^2 / m / squares * G / (1 + G))^(-(nu0 + n - 1) / 2)
    }
    S <- S / (n - 2)
    left <<- left & !differs(n)
    spent <- round(series * 0.030 * n / sum(4:12))
    at <- sort(S[left], decreasing = TRUE)[spent]
    left <<- left & S < at
    at
  })
  cat(sprintf("prior of %2d df, 4 to 12 values:", nu0), formatC(limits, digits = 2, format = "f"), "\n")
}
