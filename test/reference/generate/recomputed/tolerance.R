# Tolerance intervals: the figures of test/reference/tolerance, a function a file. With critical-values.R.

handbook.wafers <- function(mean, sd, n, p, conf) {
  howe <- howe.factor(n, p, conf)
  # Natrella 1963, one-sided.
  a <- 1 - qnorm(conf)^2 / (2 * (n - 1)); b <- qnorm(p)^2 - qnorm(conf)^2 / n
  c(k2_howe = howe, k1_approx = (qnorm(p) + sqrt(qnorm(p)^2 - a * b)) / a, k1_exact_noncentral_t = one.sided.factor(n, p, conf),
    lower_two_sided = mean - howe * sd, upper_two_sided = mean + howe * sd, k2_exact = two.sided.factor(n, p, conf))
}
