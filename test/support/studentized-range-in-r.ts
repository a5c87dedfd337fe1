/**
 * Tails of the studentized range (on the scale of t) and of Dunnett's largest |t| in R, from the double integrals over error and
 * location that define them: R's own ptukey reaches 5 to 8 digits only, and Dunnett's is no part of what comes with R. Both are
 * sums over even steps, which are exact to rounding for such functions. To stand before the R code of a test.
 */
export const rangesInR = `
  step <- 0.02; sd <- exp(seq(-7, 1.8, by = step)); h <- 0.05; z <- seq(-9.5, 9.5, by = h)
  weight <- function(df) 2 * df * sd^2 * dchisq(df * sd^2, df) * step
  range.within <- function(t, k, one)
    sum(k * dnorm(z) * (pnorm(z) - pnorm(z - sqrt(2) * t * one))^(k - 1)) * h
  tukey <- function(t, k, df) sum(weight(df) * (1 - sapply(sd, range.within, t = t, k = k)))
  tukey.lower <- function(t, k, df) sum(weight(df) * sapply(sd, range.within, t = t, k = k))
  dunnett <- function(t, k, df) sum(weight(df) * (1 - sapply(sd, function(one)
    sum(dnorm(z) * (pnorm(sqrt(2) * t * one - z) - pnorm(-sqrt(2) * t * one - z))^k) * h)))
  critical <- function(tail, k, df) uniroot(function(t) tail(t, k, df) - 0.05, c(1.5, 12), tol = 1e-14)$root
`;
