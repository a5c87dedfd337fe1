# What somebody who knows R would write for a few catches: the delivery per turn with its interval, and the next catch's.
# Usage: Rscript bench/enough.R catches.csv
catches <- read.csv(commandArgs(trailingOnly = TRUE)[1])
catches$net_kg <- catches$gross_kg - catches$tare_kg
fit <- lm(net_kg ~ 0 + turns, data = catches)
print(confint(fit))
print(predict(fit, data.frame(turns = mean(catches$turns)), interval = "prediction"))
