# Three bins of one morning, run with R 4.2.2, limma 3.54.1; for test/model/one-morning.test.ts, test/model/known-state.test.ts,
# test/model/known-width.test.ts, test/model/fill-estimate.test.ts, test/model/next-catch.test.ts, test/model/lent-scatter.test.ts,
# test/questions/catches-needed.test.ts, test/analysis/borrowing.test.ts and test/statistics/spread-votes.test.ts.
# Catches of 20 turns on a scale of 20 g. q is the relative variance of a catch times its turns, H the relative half-width at
# 95 %: H² = (t·√(q/T))² + (z·reading)², a reading being the mean of two roundings of the scale (triangular, d²/6) a catch.
# Two lone catches have t over both. r catches more add r degrees of freedom; the variance that they will show follows F.
#   Rscript test/reference/generate/one-morning.R
source("test/reference/generate/common.R")
A <- c(6.02, 5.91, 6.10); B <- c(5.48, 5.57, 5.50); C <- c(6.33, 6.20, 6.28)
t <- 20; d <- 0.02; z <- qnorm(0.975)
q.of <- function(m) { b <- mean(m) / t; sum((m - b * t)^2 / t) / (length(m) - 1) / b^2 }
reading <- function(n, b, d) d^2 / 6 * (n / (n * t))^2 / b^2
half <- function(known, m, d = 0.02) {
  n <- length(m)
  sqrt(qt(0.975, known[1])^2 * known[2] / (n * t) + z^2 * reading(n, mean(m) / t, d))
}
alone <- function(m) {
  known <- c(length(m) - 1, q.of(m))
  if (known[1] >= 2) half(known, m) else qt(0.975, 1) * sqrt(known[2] / (length(m) * t) + reading(length(m), mean(m) / t, d))
}

for (bin in c("A", "B", "C")) show(paste("own q of", bin), q.of(get(bin)))
vote <- vote.of.others(c(q.of(B), q.of(C)), c(2, 2))
show("vote of B and C: centre, variance", vote)
prior <- prior.of(vote)
show("prior of B and C: df, variance", prior)
show("its variance over the geometric mean of theirs", prior[2] / sqrt(q.of(B) * q.of(C)))
known <- moderated(prior, q.of(A), 2)
show("A with what B and C lend: df, q", known)
show("H of A, lent", half(known, A))
show("H of A, by itself", alone(A))
show("H of A, lent, a scale without steps", half(known, A, 0))
show("H of A, by itself, a scale without steps", half(c(2, q.of(A)), A, 0))
show("H of the first catch, lent", half(prior, A[1]))
two <- moderated(prior, q.of(A[1:2]), 1)
show("own q of the first two", q.of(A[1:2]))
show("first two, lent: df, q", two)
show("H of the first two, lent", half(two, A[1:2]))
show("H of the first two, by themselves", alone(A[1:2]))

# n catches made of delivery b, r more: half-width to be expected, argument of F, its chance, and what is not exceeded with 80 %.
planned <- function(known, n, b, r, tolerance, phi = 1) {
  N <- n + r; T <- N * t
  a <- if (n == 0) r - 1 else r
  nu <- known[1] + a
  tt <- qt(0.975, nu)
  read <- z^2 * reading(N, b, d)
  most <- ((tolerance / phi)^2 - read) * T / tt^2
  f <- (nu * most / known[2] - known[1]) / a
  c(sqrt(tt^2 * known[2] / T + read), f, pf(f, a, known[1]),
    sqrt(tt^2 * known[2] * (known[1] + a * qf(0.8, a, known[1])) / (nu * T) + read))
}
for (r in 1:3) show(paste("A,", r, "more, 2 %: H, F, chance, H at 80 %"), planned(known, 3, mean(A) / t, r, 0.02))
for (phi in c(1.05, 1.08)) show(paste("A, 2 more, widths taken", phi, "times: chance"), planned(known, 3, mean(A) / t, 2, 0.02, phi)[3])
for (m in 2:3) show(paste("nothing caught, 0.3 kg/turn,", m, "catches, 3 %: H, F, chance, H at 80 %"), planned(prior, 0, 0.3, m, 0.03))

# What a further catch is worth: root of both variances, with three catches and with four.
u <- function(n) sqrt(known[2] / (n * t) + reading(n, mean(A) / t, d))
show("standard error after three catches, after four", c(u(3), u(4)))

# Own earlier fills of q = 0.0042 on 8 df, four of them, beside B and C.
own <- vote.of.own.fills(0.0042, 8, 4)
show("vote of own earlier fills: centre, variance", own)
all <- together(own, vote)
show("variance of own fills, B and C together", all[2])
prior.of.all <- prior.of(all)
show("prior of all: df, variance", prior.of.all)
state <- moderated(prior.of.all, q.of(A), 2)
show("A with all of them: df, q", state)
show("H of A with all of them", half(state, A))
# How much so many meters of so many df tell, h = 0.5.
for (one in list(c(1, 2), c(1, 8), c(2, 2), c(2, 8), c(5, 4), c(30, 5)))
  show(sprintf("prior df by %d meters of %d df", one[1], one[2]),
       prior.of(vote.of.others(rep(1, one[1]), rep(one[2], one[1])))[1])
show("prior df by ever so many meters", 2 * limma::trigammaInverse(1))
