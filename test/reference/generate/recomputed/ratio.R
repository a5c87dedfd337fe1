# Ratios of means: the figures of test/reference/ratio, a function a file.

fieller.welch <- function(x, y) {
  m <- c(mean(x), mean(y)); v <- c(var(x) / length(x), var(y) / length(y)); df <- c(length(x), length(y)) - 1
  ratio <- m[1] / m[2]
  # Welch and Satterthwaite for mean x - rho mean y.
  df.at <- function(rho) { part <- v * c(1, rho^2); sum(part)^2 / sum(part^2 / df) }
  # Fieller: the rho at which (mean x - rho mean y)^2 is t^2 times its variance.
  limits <- function(t) {
    a <- m[2]^2 - t^2 * v[2]; b <- m[1] * m[2]; c <- m[1]^2 - t^2 * v[1]
    (b + c(-1, 1) * sqrt(b^2 - a * c)) / a
  }
  own <- limits(qt(0.975, df.at(ratio))); other <- limits(qt(0.975, df.at(1)))
  c(mean_x = m[1], mean_y = m[2], ratio = ratio, t_rho1 = (m[1] - m[2]) / sqrt(sum(v)), df = df.at(1),
    lower95 = own[1], upper95 = own[2], df_at_ratio = df.at(ratio),
    lower_with_df_at_rho1 = other[1], upper_with_df_at_rho1 = other[2])
}
