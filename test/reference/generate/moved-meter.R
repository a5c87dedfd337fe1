# A meter that moved with the seventh of ten fills, run with R 4.2.2; for test/model/history.test.ts, test/questions/drift.test.ts,
# test/statistics/shift-evidence.test.ts, test/statistics/shift-replay.test.ts and test/statistics/spread-within.test.ts.
# Evidence of a shift after f of n values: Bayes factor with Jeffreys' prior of the spread and Zellner's g prior of the shift,
# G = 2f(n − f)/n, on ν = ν0 + n − 2 degrees of freedom; averaged over the splits but the newest. The newest value alone by t.
#   Rscript test/reference/generate/moved-meter.R
source("test/reference/generate/common.R")
before <- c(0.2960, 0.3015, 0.2988, 0.3042, 0.2975, 0.3011)
after <- c(0.3165, 0.3190, 0.3148, 0.3201)
series <- c(before, after)
none <- c(0, 0)
lent <- c(2, (0.0214 * 0.3)^2)

within <- function(prior, ...) {
  groups <- list(...)
  df <- sum(lengths(groups) - 1)
  moderated(prior, sum(sapply(groups, function(g) sum((g - mean(g))^2))) / df, df)
}
next.fill <- function(known, k) qt(0.975, known[1]) * sqrt(known[2] * (1 + 1 / k))
pooled <- within(none, before, after)
show("mean of the level in force", mean(after))
show("spread within both levels: df, standard deviation", c(pooled[1], sqrt(pooled[2])))
show("next fill ±, spread of both levels", next.fill(pooled, 4))
show("next fill ±, all ten as one", next.fill(within(none, series), 10))
show("next fill ±, with the lent spread", next.fill(within(lent, before, after), 4))

judged <- function(y, prior) {
  n <- length(y); f <- seq_len(n - 1); m <- f * (n - f) / n
  D <- sapply(f, function(f) mean(y[-(1:f)]) - mean(y[1:f]))
  r <- D^2 * m / (prior[1] * prior[2] + sum((y - mean(y))^2))
  nu <- prior[1] + n - 2
  newest <- r[n - 1]
  G <- 2 * m
  B <- (1 + G)^-0.5 * (1 - r * G / (1 + G))^(-(nu + 1) / 2)
  list(p = 2 * pt(-sqrt(nu * newest / (1 - newest)), nu), S = sum(B[f <= n - 2]) / (n - 2), B = B)
}
for (n in c(4, 7, 8)) with(judged(series[1:n], none), show(paste("own spread, fill", n, ": p of the newest, evidence"), c(p, S)))
show("own spread, fill 8: evidence of the split after six", judged(series[1:8], none)$B[6])
for (n in 7:9) with(judged(series[1:n], lent), show(paste("lent spread, fill", n, ": p of the newest, evidence"), c(p, S)))
