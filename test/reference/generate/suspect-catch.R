# A catch that stands out, for test/model/doubted-estimate.test.ts; run with R 4.2.2. Four catches of 20 turns; others lend a
# relative scatter q = 0.0045 turns on 8 degrees of freedom, known for certain. Deleted residuals on 8 + 2 degrees of freedom,
# two-sided, Bonferroni over the four; the bands with and without the catch, and the hull of both. No division is read.
#   Rscript test/reference/generate/suspect-catch.R
source("test/reference/generate/common.R")
m <- c(6.00, 6.05, 5.97, 6.42); t <- 20
variance <- 0.0045 * (mean(m) / t)^2
statistic <- sapply(seq_along(m), function(i) {
  rest <- moderated(c(8, variance), var(m[-i]) / t, 2)
  (m[i] - mean(m[-i])) / sqrt(rest[2] * t * (1 + 1 / 3))
})
show("deleted residuals", statistic)
show("limit at 5 %, at 1 %", qt(1 - c(0.05, 0.01) / 2 / 4, 10))
band <- function(m) {
  b <- mean(m) / t
  known <- moderated(c(8, 0.0045), var(m) / t / b^2, length(m) - 1)
  c(b, b * qt(0.975, known[1]) * sqrt(known[2] / (t * length(m))))
}
with.it <- band(m); without <- band(m[1:3])
show("with it: value, half-width", with.it)
show("without: value, half-width", without)
show("hull", c(min(with.it[1] - with.it[2], without[1] - without[2]), max(with.it[1] + with.it[2], without[1] + without[2])))
