# Rank trend: the figures of test/reference/trend, a function a file. Exact p values by R's cor.test.

kendall.s <- function(x, y) sum(sign(outer(x, x, "-") * outer(y, y, "-"))) / 2
kendall.exact <- function(x, y, alternative)
  cor.test(x, y, method = "kendall", exact = TRUE, alternative = alternative)

mann.kendall.epa <- function(y) {
  n <- length(y)
  exact <- kendall.exact(seq_len(n), y, "greater")
  c(S = kendall.s(seq_len(n), y), p_one_sided = exact$p.value, tau = exact$estimate[[1]], var_S = n * (n - 1) * (2 * n + 5) / 18)
}

theil.sen.usgs <- function(x, y) {
  pair <- combn(length(x), 2)
  slope <- median((y[pair[2, ]] - y[pair[1, ]]) / (x[pair[2, ]] - x[pair[1, ]]))
  exact <- kendall.exact(x, y, "two.sided")
  c(slope = slope, intercept = median(y) - slope * median(x), S = kendall.s(x, y), tau = exact$estimate[[1]],
    p_two_sided = exact$p.value, ols_slope = coef(lm(y ~ x))[[2]])
}
