# Straight lines: the figures of test/reference/regression, a function a file.

draper.smith.lack.of.fit <- function(x, y) {
  line <- lm(y ~ x)
  split <- anova(line, lm(y ~ factor(x)))
  c(intercept = coef(line)[[1]], slope = coef(line)[[2]], regression_ss = anova(line)["x", "Sum Sq"],
    residual_ss = deviance(line), residual_df = df.residual(line),
    lack_of_fit_ss = split[2, "Sum of Sq"], lack_of_fit_df = split[2, "Df"],
    pure_error_ss = split[2, "RSS"], pure_error_df = split[2, "Res.Df"], lack_of_fit_F = split[2, "F"],
    lack_of_fit_p = split[2, "Pr(>F)"])
}

inverse.prediction.arsenic <- function(x, y, y0, conf) {
  line <- lm(y ~ x)
  b <- coef(line)[["x"]]; s <- sigma(line); n <- length(x)
  sxx <- sum((x - mean(x))^2)
  estimate <- (y0 - coef(line)[[1]]) / b
  t <- qt((1 + conf) / 2, n - 2)
  # Where the limits of prediction (one new y) or of the mean response (none) cross y0.
  crossing <- function(new) {
    g <- (t * s / b)^2 / sxx
    off <- estimate - mean(x)
    mean(x) + (off + c(-1, 1) * t * s / b * sqrt((1 - g) * (new + 1 / n) + off^2 / sxx)) / (1 - g)
  }
  wald <- s / b * sqrt(1 + 1 / n + (estimate - mean(x))^2 / sxx)
  c(estimate = estimate, lower_inversion = crossing(1)[1], upper_inversion = crossing(1)[2],
    wald_se = wald, wald_lower = estimate - t * wald, wald_upper = estimate + t * wald,
    mean_response_lower = crossing(0)[1], mean_response_upper = crossing(0)[2],
    intercept = coef(line)[[1]], slope = b, residual_sd = s)
}
