# Outlier tests: the figures of test/reference/outlier, a function a file. With critical-values.R.

grubbs.mass.spectrometer <- function(y, alpha) c(
  G = max(abs(y - mean(y))) / sd(y),
  critical_one_sided = grubbs.critical(length(y), alpha), critical_two_sided = grubbs.critical(length(y), alpha / 2),
  mean = mean(y), sd = sd(y)
)
