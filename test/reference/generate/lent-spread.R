# The next fill with a spread that two other meters lend, for test/model/across-fills.test.ts, test/statistics/spread-votes.test.ts
# and test/questions/skipping.test.ts; run with R 4.2.2, limma 3.54.1. The others: nine fills each, spreads 2.1 and 3.4 %.
#   Rscript test/reference/generate/lent-spread.R
source("test/reference/generate/common.R")
vote <- vote.of.others(c(0.021, 0.034)^2, c(8, 8))
show("vote: centre, variance", vote)
prior <- prior.of(vote)
show("prior: df, standard deviation", c(prior[1], sqrt(prior[2])))
show("its variance over the geometric mean of theirs", prior[2] / (0.021 * 0.034))
fills <- c(0.2960, 0.3080, 0.2995)
for (k in 1:3) {
  own <- fills[1:k]
  s2 <- if (k > 1) var(own) / mean(own)^2 else 0
  known <- moderated(prior, s2, k - 1)
  show(sprintf("after %d: df, relative spread, half-width for the next fill", k),
       c(known[1], sqrt(known[2]), qt(0.975, known[1]) * sqrt(known[2] * (1 + 1 / k))))
  if (k > 1) show(sprintf("after %d: half-width by itself", k), qt(0.975, k - 1) * sqrt(s2 * (1 + 1 / k)))
}
