# One-way random effects: the figures of test/reference/varcomp, a function a file. Restricted and ordinary maximum likelihood of
# y = mean + group + error, written out (Searle, Casella and McCulloch 1992, Variance Components, chapter 3): with
# ratio = between / within and w = n / (1 + ratio n), mean and within follow from the ratio, and the ratio is the zero of the
# score, or 0 where the likelihood only falls.

sums.of.squares <- function(group, y) {
  n <- c(tapply(y, group, length)); m <- c(tapply(y, group, mean))
  list(n = n, m = m, between = sum(n * (m - mean(y))^2), within = sum((y - m[as.character(group)])^2))
}

likelihood <- function(group, y, restricted) {
  a <- sums.of.squares(group, y)
  df <- length(y) - restricted
  at <- function(ratio) {
    w <- a$n / (1 + ratio * a$n)
    mean <- sum(w * a$m) / sum(w)
    list(w = w, mean = mean, off = a$m - mean, within = (a$within + sum(w * (a$m - mean)^2)) / df)
  }
  score <- function(ratio) {
    p <- at(ratio)
    sum(p$w^2 * p$off^2) / p$within - sum(p$w) + restricted * sum(p$w^2) / sum(p$w)
  }
  ratio <- if (score(0) <= 0) 0 else uniroot(score, c(0, 1e4), tol = 1e-15, maxiter = 10000)$root
  p <- at(ratio)
  list(between = ratio * p$within, within = p$within, mean = p$mean, se = sqrt(p$within / sum(p$w)),
       deviance = df * (log(2 * pi * p$within) + 1) + sum(log(1 + ratio * a$n)) + restricted * log(sum(p$w)))
}

one.way <- function(group, y) {
  reml <- likelihood(group, y, restricted = TRUE)
  ml <- likelihood(group, y, restricted = FALSE)
  a <- sums.of.squares(group, y)
  k <- length(a$n)
  c(reml_var_between = reml$between, reml_sd_between = sqrt(reml$between), reml_var_within = reml$within,
    reml_sd_within = sqrt(reml$within), mean = reml$mean, se_mean = reml$se, reml_criterion = reml$deviance,
    reml_logLik = -reml$deviance / 2, ml_var_between = ml$between, ml_sd_between = sqrt(ml$between), ml_var_within = ml$within,
    ml_sd_within = sqrt(ml$within), ml_mean = ml$mean, ml_deviance = ml$deviance, anova_ms_between = a$between / (k - 1),
    anova_ms_within = a$within / (length(y) - k), anova_ss_between = a$between, anova_ss_within = a$within)
}

dyestuff <- one.way
dyestuff2 <- one.way
rail <- one.way

# By mean squares, the size of a group being n0 where groups differ.
anova.between <- function(figures, n0) (figures[["anova_ms_between"]] - figures[["anova_ms_within"]]) / n0

batches.handbook <- function(group, y) {
  figures <- one.way(group, y)
  c(figures, var_between = anova.between(figures, length(y) / length(unique(group))), var_within = figures[["anova_ms_within"]])
}

bull.conception.unbalanced <- function(group, y) {
  figures <- one.way(group, y)
  n <- table(group)
  n0 <- (sum(n) - sum(n^2) / sum(n)) / (length(n) - 1)
  c(figures, n0 = n0, anova_var_between = anova.between(figures, n0))
}
