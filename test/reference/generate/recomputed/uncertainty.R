# Worked examples of the Guide to the expression of uncertainty in measurement: the figures of test/reference/uncertainty, a
# function a file.

gum.g4.welch.satterthwaite <- function(relative_u_percent, n) {
  u <- relative_u_percent
  combined <- sqrt(sum(u^2))
  # The Guide goes on with the figure it prints, 1.03 %, and with t of 19 degrees of freedom.
  printed <- round(combined, 2)
  t <- qt(0.975, 19)
  c(combined_relative_percent = combined, nu_eff = printed^4 / sum(u^4 / (n - 1)),
    nu_eff_unrounded = combined^4 / sum(u^4 / (n - 1)), t95_19 = t, expanded_percent = t * printed)
}

gum.h2.resistance.reactance <- function(V, I_mA, phi) {
  sets <- cbind(V, I = I_mA / 1000, phi)
  m <- colMeans(sets)
  covariance <- cov(sets) / length(V)
  u <- sqrt(diag(covariance))
  r <- cov2cor(covariance)
  z <- m[["V"]] / m[["I"]]
  cosine <- cos(m[["phi"]]); sine <- sin(m[["phi"]])
  # Derivatives of R, X and Z by V, I and phi.
  by <- rbind(
    R = z * c(cosine / m[["V"]], -cosine / m[["I"]], -sine),
    X = z * c(sine / m[["V"]], -sine / m[["I"]], cosine),
    Z = z * c(1 / m[["V"]], -1 / m[["I"]], 0)
  )
  propagated <- by %*% covariance %*% t(by)
  u.of <- sqrt(diag(propagated))
  r.of <- cov2cor(propagated)
  c(V_mean = m[["V"]], u_V = u[["V"]], I_mean_mA = mean(I_mA), u_I_mA = 1000 * u[["I"]], phi_mean = m[["phi"]], u_phi = u[["phi"]],
    r_V_I = r["V", "I"], r_V_phi = r["V", "phi"], r_I_phi = r["I", "phi"],
    R = z * cosine, u_R = u.of[["R"]], X = z * sine, u_X = u.of[["X"]], Z = z, u_Z = u.of[["Z"]],
    r_R_X = r.of["R", "X"], r_R_Z = r.of["R", "Z"], r_X_Z = r.of["X", "Z"])
}

gum.h3.thermometer <- function(t, b, t0, t_new) {
  line <- lm(b ~ above, data.frame(b, above = t - t0))
  covariance <- vcov(line)
  at <- predict(line, data.frame(above = t_new - t0), se.fit = TRUE)
  c(y1 = coef(line)[[1]], s_y1 = sqrt(covariance[1, 1]), y2 = coef(line)[[2]], s_y2 = sqrt(covariance[2, 2]),
    r = cov2cor(covariance)[1, 2], s = sigma(line), b_30 = at$fit[[1]], u_b_30 = at$se.fit[[1]])
}

gum.h5.zener.anova <- function(daily_mean_V, daily_sd_uV, k) {
  days <- length(daily_mean_V)
  of.means <- 1e6 * sd(daily_mean_V)
  s.a <- sqrt(k) * of.means
  s.b <- sqrt(mean(daily_sd_uV^2))
  all.alike <- ((days - 1) * s.a^2 + days * (k - 1) * s.b^2) / (days * k - 1)
  critical <- function(p) qf(p, days - 1, days * (k - 1))
  c(grand_mean_V = mean(daily_mean_V), s_of_daily_means_uV = of.means, s_a_uV = s.a, s_b_uV = s.b,
    F = s.a^2 / s.b^2, F_from_rounded = round(s.a)^2 / round(s.b)^2,
    between_day_sd_uV = sqrt((s.a^2 - s.b^2) / k), u_mean_uV = of.means / sqrt(days),
    u_mean_if_no_between_uV = sqrt(all.alike / (days * k)), F_critical_95 = critical(0.95), F_critical_975 = critical(0.975))
}
