/**
 * Votes on a spread in R, written from the formulas and not from the code: e = ln s² − ψ(d/2) + ln(d/2) with variance ψ′(d/2);
 * others by weights 1/(4h² + ψ′); ψ′ is inverted by R's root finder. A vote is c(centre, variance), a prior and what
 * comes of it are c(df, variance). To stand before the R code of a test.
 *
 * Source Smyth 2004, Statistical Applications in Genetics and Molecular Biology 3, article 3
 */
export const votesInR = `
  centre <- function(s2, d) log(s2) - digamma(d / 2) + log(d / 2)
  vote.of.others <- function(s2, d, h = 0.5) {
    w <- 1 / (4 * h^2 + trigamma(d / 2))
    c(sum(w * centre(s2, d)) / sum(w), 4 * h^2 + 1 / sum(w))
  }
  vote.of.own.fills <- function(s2, d, k, h = 0.2)
    c(centre(s2, d), 4 * h^2 * (1 + 1 / k) + trigamma(d / 2))
  vote.of.assumption <- function(typical, g = 1) c(log(typical), 4 * g^2)
  together <- function(...) {
    v <- rbind(...)
    V <- 1 / sum(1 / v[, 2])
    c(V * sum(v[, 1] / v[, 2]), V)
  }
  prior.of <- function(vote) {
    root <- uniroot(function(l) log(trigamma(exp(l))) - log(vote[2]), c(-20, 20), tol = 1e-15)$root
    x <- exp(root)
    c(2 * x, exp(vote[1] + digamma(x) - log(x)))
  }
  moderated <- function(prior, s2 = 0, d = 0)
    c(prior[1] + d, (prior[1] * prior[2] + d * s2) / (prior[1] + d))
  # Relative scatter of a fill, in turns: squares about the ratio of sums over the turns of each catch.
  squares <- function(m, t) { b <- sum(m) / sum(t); sum((m - b * t)^2 / t) / b^2 }
  # Half-width from c(df, variance) over T turns, with n catches read on a scale of division d.
  width <- function(known, T, n = 0, d = 0, b = 1, level = 0.95) {
    p <- (1 + level) / 2
    sqrt(qt(p, known[1])^2 * known[2] / T + qnorm(p)^2 * d^2 / 6 * (n / T)^2 / b^2)
  }
`;
