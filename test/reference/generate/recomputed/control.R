# Control charts: the figures of test/reference/control, a function a file.

individuals.chart.handbook <- function(x) {
  moving <- mean(abs(diff(x)))
  reach <- 3 * moving / 1.128
  c(mean = mean(x), mean_moving_range = moving, ucl = mean(x) + reach, lcl = mean(x) - reach)
}

ewma.handbook <- function(x, lambda, target, s, k) {
  z <- Reduce(function(before, now) lambda * now + (1 - lambda) * before, x, target, accumulate = TRUE)[-1]
  upper <- function(t) target + k * s * sqrt(lambda / (2 - lambda) * (1 - (1 - lambda)^(2 * t)))
  c(ucl = upper(Inf), lcl = 2 * target - upper(Inf), setNames(z, paste0("z", seq_along(z))),
    ucl_at_t1 = upper(1), ucl_at_t2 = upper(2))
}

cusum.handbook <- function(x, target, h, k) {
  summed <- function(excess) Reduce(function(before, now) max(0, before + now), excess, 0, accumulate = TRUE)[-1]
  high <- summed(x - target - k)
  low <- summed(target - k - x)
  c(first_signal_upper = which(high > h)[1], setNames(high, paste0("Sh", seq_along(x))), setNames(low, paste0("Sl", seq_along(x))))
}
