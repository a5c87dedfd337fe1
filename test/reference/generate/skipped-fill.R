# The chance of a rate off by more than 5 % at the next fill, stated and happened, for test/questions/skipping.test.ts; simulated
# with R 4.2.2, 60,000 seasons a row. Fills of three catches (scatter 1.5 %), their true spread log-uniform from 1 to 6 %; the
# drive is left at the mean of the fills. Stated by Student's t; happened for one who knows the true mean and spread.
#   Rscript test/reference/generate/skipped-fill.R
source("test/reference/generate/common.R")
set.seed(20261126)
seasons <- 60000
beyond <- function(at, scale, df) pt((-0.05 - at) / scale, df) + pt((0.05 - at) / scale, df, lower.tail = FALSE)
for (fills in c(3, 6, 10)) {
  spread <- 0.01 * 6^runif(seasons)
  seen <- 1 + sqrt(spread^2 + 0.015^2 / 3) * matrix(rnorm(seasons * fills), seasons)
  mean <- rowMeans(seen)
  s <- sqrt(rowSums((seen - mean)^2) / (fills - 1))
  show(paste(fills, "fills: stated, happened"),
       c(mean(beyond(0, s * sqrt(1 + 1 / fills) / mean, fills - 1)), mean(beyond(1 / mean - 1, spread / mean, Inf))))
}
