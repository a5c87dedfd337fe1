# Comparisons of means and spreads: the figures of test/reference/comparison, a function a file. With critical-values.R.

in.groups <- function(...) {
  groups <- list(...)
  data.frame(y = unlist(groups, use.names = FALSE), group = factor(rep(seq_along(groups), lengths(groups))))
}

dunnett.1955 <- function(control, drug_a, drug_b) {
  fit <- lm(y ~ group, in.groups(control, drug_a, drug_b))
  n <- c(length(drug_a), length(drug_b))
  t <- coef(summary(fit))[-1, "t value"]
  p <- sapply(abs(t), dunnett.tail, loading = sqrt(n / (n + length(control))), df = df.residual(fit))
  c(df = df.residual(fit), s = sigma(fit), t_a = t[[1]], t_b = t[[2]], p_a = p[[1]], p_b = p[[2]])
}

games.howell.recomputed <- function(g1, g2, g3, g4) {
  groups <- list(g1, g2, g3, g4)
  of.pair <- function(i, j) {
    # R names the difference of x from y.
    welch <- t.test(groups[[j]], groups[[i]])
    d <- mean(groups[[j]]) - mean(groups[[i]]); df <- welch$parameter[[1]]; se <- welch$stderr
    reach <- qtukey(0.95, length(groups), df) / sqrt(2) * se
    figures <- c(d = d, se = se, df = df, p = ptukey(abs(d) / se * sqrt(2), length(groups), df, lower.tail = FALSE),
                 lower = d - reach, upper = d + reach)
    setNames(figures, paste0(names(figures), "_", i, j))
  }
  pair <- combn(length(groups), 2)
  welch <- oneway.test(y ~ group, in.groups(g1, g2, g3, g4))
  c(unlist(lapply(seq_len(ncol(pair)), function(k) of.pair(pair[1, k], pair[2, k]))),
    welch_F = welch$statistic[[1]], welch_df2 = welch$parameter[[2]], welch_p = welch$p.value)
}

levene.bartlett.gear <- function(y, batch) {
  group <- factor(batch)
  off <- abs(y - ave(y, group, FUN = median))
  levene <- anova(lm(off ~ group))
  bartlett <- bartlett.test(y, group)
  c(levene_W = levene[1, "F value"], levene_p = levene[1, "Pr(>F)"],
    levene_critical_F = qf(0.95, nlevels(group) - 1, length(y) - nlevels(group)),
    bartlett_T = bartlett$statistic[[1]], bartlett_p = bartlett$p.value, bartlett_critical = qchisq(0.95, nlevels(group) - 1),
    sd = sd(y), chisq_T_sigma0_0p1 = (length(y) - 1) * var(y) / 0.1^2)
}

tost.ratio.paired.auc <- function(test, ref, low, high) {
  d <- log(test / ref)
  above <- t.test(d, mu = log(low), alternative = "greater")
  below <- t.test(d, mu = log(high), alternative = "less")
  interval <- exp(t.test(d, conf.level = 0.9)$conf.int)
  c(gmr = exp(mean(d)), lower90 = interval[1], upper90 = interval[2], df = above$parameter[[1]],
    t_lower = above$statistic[[1]], p_lower = above$p.value, t_upper = below$statistic[[1]], p_upper = below$p.value,
    p_tost = max(above$p.value, below$p.value))
}

tukey.handbook <- function(g1, g2, g3, g4) {
  fit <- lm(y ~ group, in.groups(g1, g2, g3, g4))
  m <- list(g1 = mean(g1), g2 = mean(g2), g3 = mean(g3), g4 = mean(g4))
  q <- qtukey(0.95, length(m), df.residual(fit))
  reach <- q * sigma(fit) / sqrt(length(g1))
  of.pair <- function(a, b)
    setNames(m[[a]] - m[[b]] + c(-1, 1) * reach, paste0(a, "-", b, c("_lower", "_upper")))
  # The pairs in the direction in which the handbook has them.
  c(of.pair("g2", "g1"), of.pair("g3", "g1"), of.pair("g1", "g4"), of.pair("g2", "g3"), of.pair("g3", "g4"), of.pair("g2", "g4"),
    q = q, error_ms = sigma(fit)^2)
}

welch.sleep <- function(x1, x2) {
  of.test <- function(name, test) setNames(
    c(test$statistic, test$parameter, test$p.value, test$conf.int), paste0(name, c("_t", "_df", "_p", "_lower", "_upper")))
  c(of.test("welch", t.test(x1, x2)), of.test("paired", t.test(x1, x2, paired = TRUE)))
}
