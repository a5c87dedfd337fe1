# Whether a meter has moved, in seasons of twelve fills, for test/bench/study/drift.test.ts and test/questions/drift.test.ts;
# simulated with R 4.2.2, 40,000 seasons a row (with a library too), 1,500 logs of three bins. Fills of three catches, catch
# scatter 1.5 %, spread 2 %. The decision after every fill is asked anew from its formulas (moved-meter.R) with its limits; the
# library is two other meters of nine fills, spreads of meters differing by a standard deviation of 0.5 of the logarithm. Then the
# tests that look once, at the end: line, largest two-sample |t|, Mann-Kendall, moving ranges, EWMA and CUSUM of normal scores.
#   Rscript test/reference/generate/seasons.R
source("test/reference/generate/common.R")
set.seed(20261129)
nu0s <- c(0, 1, 2, 3, 5, 10, 30)
limits <- rbind(
  c(1.94, 2.63, 3.57, 4.61, 5.38, 5.79, 5.86, 5.64, 5.45), c(2.85, 3.62, 4.50, 5.33, 5.77, 5.95, 5.87, 5.66, 5.36),
  c(3.80, 4.51, 5.33, 5.87, 6.12, 6.09, 5.96, 5.65, 5.18), c(4.68, 5.26, 5.70, 6.08, 6.20, 6.10, 5.83, 5.49, 5.17),
  c(5.98, 6.15, 6.35, 6.32, 6.19, 5.92, 5.60, 5.40, 5.03), c(7.86, 7.34, 6.97, 6.77, 6.16, 5.80, 5.49, 5.11, 4.67),
  c(8.84, 7.69, 7.12, 6.49, 6.02, 5.51, 5.08, 4.65, 4.30))
limit <- function(n, nu0) approx(1 / (1 + nu0s), limits[, min(n, 12) - 3], 1 / (1 + nu0), rule = 2)$y

# Rows of y are series so far; nu0 and s2 (relative to the mean) are of each row. Found with the newest value?
found.now <- function(y, nu0, s2) {
  n <- ncol(y); f <- seq_len(n - 1); m <- f * (n - f) / n
  level <- rowMeans(y)
  z <- y / level - 1
  nu <- nu0 + n - 2
  parts <- t(apply(z, 1, cumsum))[, f, drop = FALSE]
  r <- sweep(parts^2, 2, m, "/") / (nu0 * s2 + rowSums(z^2))
  newest <- r[, n - 1]
  able <- if (n >= 3) nu >= 1 else nu0 >= 1
  now <- able & 2 * pt(-sqrt(pmax(nu, 1) * newest / pmax(1 - newest, 0)), pmax(nu, 1)) <= 0.002
  if (n >= 4) {
    G <- rep(2 * m, each = nrow(y))
    B <- (1 + G)^-0.5 * (1 - r * G / (1 + G))^(-(nu + 1) / 2)
    now <- now | rowSums(B[, f <= n - 2, drop = FALSE]) / (n - 2) >= limit(n, nu0)
  }
  now
}
found.by <- function(y, nu0, s2) {
  found <- logical(nrow(y))
  sapply(seq_len(ncol(y)), function(n) {
    if (n >= 2) found <<- found | found.now(y[, 1:n, drop = FALSE], nu0, s2)
    found
  })
}
caught <- function(rows, fills, spread, shift = 0, from = fills + 1)
  matrix(1 + spread * rnorm(rows * fills) + shift * rep(seq_len(fills) >= from, each = rows) + 0.015 / sqrt(3) * rnorm(rows * fills), rows)
rel.var <- function(y) rowSums((y - rowMeans(y))^2) / (ncol(y) - 1) / rowMeans(y)^2

rows <- 40000
none <- numeric(rows)
steady <- found.by(caught(rows, 12, 0.02), none, none)
show("steady, by itself: found by 4, 6, 9, 12 fills", colMeans(steady)[c(4, 6, 9, 12)])
# Votes of two meters of 8 df make a prior of the same df whatever they show.
lent <- function(middle) {
  s2 <- replicate(2, rel.var(caught(rows, 9, middle * exp(0.5 * rnorm(rows)))))
  w <- prior.of(vote.of.others(c(1, 1), c(8, 8)))
  list(nu0 = rep(w[1], rows), s2 = w[2] * exp(rowMeans(log(s2))))
}
drawn <- function() 0.02 * exp(0.5 * rnorm(rows))
from.library <- lent(0.02)
show("steady, two other meters lend: found by 12 fills", colMeans(found.by(caught(rows, 12, drawn()), from.library$nu0, from.library$s2))[12])
for (one in list(c(.05, 4), c(.05, 7), c(.08, 3), c(.08, 4), c(.08, 7))) {
  own <- found.by(caught(rows, 12, 0.02, one[1], one[2]), none, none)
  with <- lent(0.02)
  both <- found.by(caught(rows, 12, 0.02, one[1], one[2]), with$nu0, with$s2)
  show(sprintf("%g from fill %d: found by 12, itself and with a library", one[1], one[2]), c(colMeans(own)[12], colMeans(both)[12]))
}

# Three bins that all move with the seventh fill and lend each other what they show within the levels found in each by itself.
within.levels <- function(y) {
  # After every fill: squares relative to the level, and df.
  start <- 1; closed <- c(0, 0); pending <- NULL; out <- matrix(0, length(y), 2); idx <- integer(0)
  relative <- function(i) sum((y[i] / mean(y[i]) - 1)^2)
  restart <- function(keep, then) {
    if (length(keep) > 1) closed <<- closed + c(relative(keep), length(keep) - 1)
    idx <<- then
  }
  prior <- function() if (closed[2] > 0) c(closed[2], closed[1] / closed[2]) else c(0, 0)
  for (n in seq_along(y)) {
    idx <- c(idx, n); asked <- TRUE
    if (!is.null(pending)) {
      before <- setdiff(idx, c(pending, n)); k <- length(before); p <- prior()
      df <- p[1] + k - 1
      if (df > 0) {
        s <- sqrt((p[1] * p[2] * mean(y[before])^2 + sum((y[before] - mean(y[before]))^2)) / df * (1 + 1 / k))
        back <- 2 * pt(-abs(y[n] - mean(y[before])) / s, df) > 0.05
      } else back <- TRUE
      if (back) idx <- c(before, n) else { restart(before, c(pending, n)); asked <- FALSE }
      pending <- NULL
    }
    k <- length(idx)
    if (asked && k >= 2) {
      p <- prior()
      now <- matrix(y[idx], 1); nu <- p[1] + k - 2
      z <- y[idx] / mean(y[idx]) - 1; f <- seq_len(k - 1); m <- f * (k - f) / k
      r <- cumsum(z)[f]^2 / m / (p[1] * p[2] + sum(z^2))
      G <- 2 * m; B <- (1 + G)^-0.5 * (1 - r * G / (1 + G))^(-(nu + 1) / 2)
      if (k >= 4 && sum(B[f <= k - 2]) / (k - 2) >= limit(k, p[1])) {
        at <- which.max(B[f <= k - 2])
        line <- sum((seq_len(k) - (k + 1) / 2) * z)^2 / sum((seq_len(k) - (k + 1) / 2)^2) / (p[1] * p[2] + sum(z^2))
        if (!(k >= 5 && line > r[at])) restart(idx[1:at], idx[-(1:at)])
      } else if ((k >= 3 || p[1] >= 1) && nu >= 1 && 2 * pt(-sqrt(nu * r[k - 1] / (1 - r[k - 1])), nu) <= 0.002) pending <- n
    }
    out[n, ] <- closed + if (length(idx) > 1) c(relative(idx), length(idx) - 1) else c(0, 0)
  }
  out
}
logs <- 1500
together.found <- mean(replicate(logs, {
  y <- caught(3, 12, 0.02, 0.05, 7)
  shown <- lapply(1:3, function(b) within.levels(y[b, ]))
  sapply(1:3, function(b) any(sapply(2:12, function(n) {
    others <- do.call(rbind, lapply(shown[-b], function(s) s[n, ]))
    p <- prior.of(vote.of.others(others[, 1] / others[, 2], others[, 2]))
    any(sapply(2:n, function(k) found.now(y[b, 1:k, drop = FALSE], p[1], p[2])))
  })))
}))
show("three bins that lend each other, 5 % from fill 7: found by 12", together.found)

# Looked at once, at the end.
largest.t <- function(y) {
  n <- ncol(y)
  ss <- rowSums((y - rowMeans(y))^2)
  t2 <- sapply(2:(n - 2), function(f) {
    b <- (rowMeans(y[, 1:f]) - rowMeans(y[, -(1:f)]))^2 * f * (n - f) / n
    b / (ss - b) * (n - 2)
  })
  sqrt(apply(t2, 1, max))
}
mann.kendall <- function(y) {
  n <- ncol(y)
  score <- 0
  for (i in 1:(n - 1)) for (j in (i + 1):n) score <- score + sign(y[, j] - y[, i])
  inversions <- 1
  for (k in 2:n) inversions <- rowSums(sapply(0:(k - 1), function(s) c(rep(0, s), inversions, rep(0, k - 1 - s))))
  scores <- n * (n - 1) / 2 - 2 * (seq_along(inversions) - 1)
  tails <- sapply(0:(n * (n - 1) / 2), function(s) sum(inversions[abs(scores) >= s])) / factorial(n)
  tails[abs(score) + 1]
}
once <- function(fills, shift) {
  y <- caught(rows, fills, 0.02, shift, floor(fills / 2) + 1)
  x <- seq_len(fills) - (fills + 1) / 2
  slope <- c(y %*% x) / sum(x^2)
  rest <- rowSums((y - rowMeans(y) - outer(slope, x))^2)
  line <- abs(slope) / sqrt(rest / (fills - 2) / sum(x^2)) > qt(0.975, fills - 2)
  critical <- quantile(largest.t(matrix(rnorm(200000 * fills), 200000)), 0.95)
  ranges <- rowMeans(abs(y[, -1] - y[, -fills]))
  scores <- sapply(3:fills, function(i) {
    e <- y[, 1:(i - 1)]
    s <- sqrt(rowSums((e - rowMeans(e))^2) / (i - 2) * (1 + 1 / (i - 1)))
    qnorm(pt((y[, i] - rowMeans(e)) / s, i - 2))
  })
  a <- up <- down <- numeric(rows); ewma <- cusum <- logical(rows)
  for (i in seq_len(ncol(scores))) {
    a <- a + 0.3 * (scores[, i] - a)
    ewma <- ewma | abs(a) > 2.7 * sqrt(0.3 / 1.7 * (1 - 0.7^(2 * i)))
    up <- pmax(0, up + scores[, i] - 0.5); down <- pmax(0, down - scores[, i] - 0.5)
    cusum <- cusum | up > 3 | down > 3
  }
  show(sprintf("%d fills, %g: line, shift, Mann-Kendall, individuals, EWMA, CUSUM", fills, shift),
       c(mean(line), mean(largest.t(y) > critical), mean(mann.kendall(y) <= 0.05), mean(apply(abs(y - rowMeans(y)), 1, max) > 2.66 * ranges), mean(ewma), mean(cusum)))
}
once(6, 0); once(12, 0); once(8, 0.05); once(12, 0.05)
