# Coverage of the larger of half-width and tolerance where catches stop at the tolerance, by their own scatter only, for
# test/bench/study/stopping.test.ts; simulated with R 4.2.2, 100,000 fills a cell. The least over the scatters of a row.
#   Rscript test/reference/generate/stopped-catches.R
source("test/reference/generate/common.R")
set.seed(20261129)
fills <- 100000
coverage <- function(ratio, fewest, most) {
  y <- matrix(rnorm(fills * most, 0, ratio), fills)
  going <- rep(TRUE, fills); held <- logical(fills)
  for (n in fewest:most) {
    m <- rowMeans(y[, 1:n])
    half <- qt(0.975, n - 1) * sqrt(rowSums((y[, 1:n] - m)^2) / (n - 1) / n)
    stops <- going & (half <= 1 | n == most)
    held[stops] <- (abs(m) <= pmax(half, 1))[stops]
    going <- going & !stops
  }
  mean(held)
}
ratios <- c(0.33, 0.67, 1, 1.5, 2, 3)
for (one in list(c(3, 6), c(4, 6), c(3, 12)))
  show(sprintf("from %d, at most %d: least coverage", one[1], one[2]), min(sapply(ratios, coverage, one[1], one[2])))
