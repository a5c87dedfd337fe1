# What the scripts in R share, for one-morning.R, lent-spread.R, moved-meter.R and suspect-catch.R (run with R 4.2.2 and limma
# 3.54.1, Debian's r-bioc-limma). Written from the formulas: a vote is c(centre of ln variance, its variance), a prior and what
# comes of it c(df, variance). Votes on variances: Smyth 2004, Statistical Applications in Genetics and Molecular Biology 3, 3.

show <- function(name, value) cat(sprintf("%-66s %s\n", name, paste(formatC(value, digits = 10, format = "g", flag = "#"), collapse = " ")))

centre <- function(s2, d) log(s2) - digamma(d / 2) + log(d / 2)
# Other meters: 95 % of meters within a factor exp(2h) of the middle either way, h = 0.5.
vote.of.others <- function(s2, d, h = 0.5) {
  w <- 1 / (4 * h^2 + trigamma(d / 2))
  c(sum(w * centre(s2, d)) / sum(w), 4 * h^2 + 1 / sum(w))
}
# The meter's own earlier fills, k of them, h = 0.2.
vote.of.own.fills <- function(s2, d, k, h = 0.2) c(centre(s2, d), 4 * h^2 * (1 + 1 / k) + trigamma(d / 2))
together <- function(...) {
  v <- rbind(...)
  V <- 1 / sum(1 / v[, 2])
  c(V * sum(v[, 1] / v[, 2]), V)
}
prior.of <- function(vote) {
  x <- limma::trigammaInverse(vote[2])
  c(2 * x, exp(vote[1] + digamma(x) - log(x)))
}
moderated <- function(prior, s2, d) c(prior[1] + d, (prior[1] * prior[2] + d * s2) / (prior[1] + d))
