# How often a bad catch is flagged, for test/questions/outliers/simulation.test.ts, and how often today's figure holds after a
# history with tares in it, for test/bench/study/outliers.test.ts; simulated with R 4.2.2. Catches of 6 kg and 20 turns, scatter
# 1.5 %. Deleted residuals with a scatter that others lend; Bonferroni over the catches, backward over at most two of them.
#   Rscript test/reference/generate/flagged-catches.R
source("test/reference/generate/common.R")
set.seed(20261127)
sd <- 0.015 * 6
# Which of the catches y stand out: the largest first, then the largest of the rest; as many as the last step that is significant.
flagged <- function(y, variance, df, level, most) {
  left <- seq_along(y); gone <- found <- integer(0)
  for (step in seq_len(most)) {
    n <- length(left)
    if (n < 2 || df + n - 2 <= 0) break
    p <- sapply(seq_len(n), function(i) {
      rest <- y[left][-i]
      squares <- sum((rest - mean(rest))^2)
      nu <- df + n - 2
      s2 <- (df * variance + squares) / nu
      2 * pt(-abs(y[left][i] - mean(rest)) / sqrt(s2 * (1 + 1 / (n - 1))), nu)
    })
    gone <- c(gone, left[which.min(p)]); left <- left[-which.min(p)]
    if (n * min(p) < level) found <- gone
  }
  found
}
tare <- function() runif(1, 0.2, 0.6)
turn <- function() sample(c(0.3, -0.3), 1)
starved <- function() -6 * runif(1, 0.2, 0.6)
rate <- function(fault, n, df, trials = 3000) mean(replicate(trials, {
  y <- rnorm(n, 6, sd); y[2] <- y[2] + fault()
  2 %in% flagged(y, sd^2 * rchisq(1, df) / df, df, 0.05, if (n >= 5) 2 else 1)
}))
for (one in list(c(3, 4), c(3, 20), c(4, 10), c(6, 10), c(12, 10))) show(sprintf("a tare of 0.2 to 0.6 kg in %d catches, %d df lent", one[1], one[2]), rate(tare, one[1], one[2]))
for (n in c(4, 12)) show(sprintf("a turn of twenty in %d catches, 10 df lent", n), rate(turn, n, 10))
show("a meter starved by 20 to 60 % in 4 catches, 10 df lent", rate(starved, 4, 10))

# Five earlier fills of four catches, one catch in so many with a tare of 0.4 kg. Catches that fail at 1 %, by their own fill
# first and then with what the others lend, leave the scatter. Today: two clean catches, half-width with what the fills lend.
screened <- function(fills, lent) Map(function(y, known) {
  out <- flagged(y, known[2], known[1], 0.01, 1)
  if (length(out)) y[-out] else y
}, fills, lent)
squares <- function(y) sum((y - mean(y))^2)
lend <- function(fills) {
  df <- sum(lengths(fills) - 1)
  prior.of(vote.of.own.fills(sum(sapply(fills, squares)) / df, df, length(fills)))
}
holds <- function(share, trials = 3000) mean(replicate(trials, {
  fills <- lapply(1:5, function(i) rnorm(4, 6, sd) + 0.4 * (runif(4) < share))
  once <- screened(fills, rep(list(c(0, 0)), 5))
  twice <- screened(fills, lapply(1:5, function(i) lend(once[-i])))
  today <- rnorm(2, 0, sd)
  known <- moderated(lend(twice), var(today), 1)
  abs(mean(today)) <= qt(0.975, known[1]) * sqrt(known[2] / 2)
}))
show("today's figure holds after clean fills", holds(0))
show("today's figure holds after fills with a tare in one catch of twenty", holds(0.05))
