# What the scripts of this folder share. Integrals over the whole line are sums over even steps, which for smooth functions that
# die away are exact to rounding: more digits than integrate() gives, and a fraction of its time.

# Grubbs's one-sided critical value of the largest (y - mean) / s; twice that alpha when either side counts.
grubbs.critical <- function(n, alpha) {
  t <- qt(alpha / n, n - 2, lower.tail = FALSE)
  (n - 1) / sqrt(n) * sqrt(t^2 / (n - 2 + t^2))
}

# Rosner 1983: critical value of step i of n values, two-sided, the values left being n - i + 1.
esd.lambda <- function(i, n, alpha) {
  t <- qt(alpha / (2 * (n - i + 1)), n - i - 1, lower.tail = FALSE)
  (n - i) * t / sqrt((n - i - 1 + t^2) * (n - i + 1))
}

# Tolerance factors of a normal sample: exact one-sided, exact two-sided (the double integral over mean and s), and Howe's 1969.
one.sided.factor <- function(n, p, conf) qt(conf, n - 1, ncp = qnorm(p) * sqrt(n)) / sqrt(n)
two.sided.factor <- function(n, p, conf) {
  step <- 0.05; z <- seq(-9.5, 9.5, by = step)
  # Half-width r about a mean that is off by z / sqrt(n) which holds the share p, by Newton steps.
  off <- z / sqrt(n); r <- abs(off) + qnorm((1 + p) / 2)
  for (newton in 1:20) r <- r - (pnorm(off + r) - pnorm(off - r) - p) / (dnorm(off + r) + dnorm(off - r))
  confidence <- function(k) sum(dnorm(z) * pchisq((n - 1) * r^2 / k^2, n - 1, lower.tail = FALSE)) * step
  uniroot(function(k) confidence(k) - conf, c(1, 100), tol = 1e-14)$root
}
howe.factor <- function(n, p, conf) qnorm((1 + p) / 2) * sqrt((n - 1) * (1 + 1 / n) / qchisq(1 - conf, n - 1))

# Dunnett 1955: chance that the largest |t| of treatments against one control exceeds t. The loading of a treatment on the
# control is sqrt(n / (n + n of the control)); with equal groups sqrt(1/2).
dunnett.tail <- function(t, loading, df) {
  step.z <- 0.2; z <- seq(-9.4, 9.4, by = step.z)
  # A row for each bound, a column for each z.
  beyond <- function(bound) {
    inside <- 1
    for (l in unique(loading)) {
      own <- sqrt(1 - l^2)
      each <- pnorm(outer(bound, l * z, "+") / own) - pnorm(outer(-bound, l * z, "+") / own)
      inside <- inside * each^sum(loading == l)
    }
    1 - c(inside %*% dnorm(z)) * step.z
  }
  if (is.infinite(df)) return(beyond(t))
  # Over u = ln(s / sigma); 10 and more degrees of freedom leave nothing beyond these ends.
  step.u <- 0.05; u <- seq(-4.5, 1.2, by = step.u)
  sum(2 * df * exp(2 * u) * dchisq(df * exp(2 * u), df) * beyond(t * exp(u))) * step.u
}
