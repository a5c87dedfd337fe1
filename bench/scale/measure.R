# What somebody who knows R would write for a long log: totals of every fill, and the line through the origin with its interval.
# Usage: Rscript bench/scale/measure.R log.csv
suppressPackageStartupMessages(library(data.table))
start <- proc.time()
log <- fread(commandArgs(trailingOnly = TRUE)[1])
log[, net_kg := gross_kg - tare_kg]
fills <- log[, .(
  catches = .N, turns = sum(turns), mass = sum(net_kg), squares = sum(net_kg^2 / turns)
), by = .(bin, product, fill)]
# Variance of a catch in proportion to its turns, as lm(net_kg ~ 0 + turns, weights = 1 / turns) has it.
fills[, delivery := mass / turns]
fills[, half_width := qt(0.975, catches - 1) * sqrt(pmax(0, squares - mass^2 / turns) / (catches - 1) / turns)]
used <- proc.time() - start
peak <- as.numeric(gsub("\\D", "", grep("^VmHWM", readLines("/proc/self/status"), value = TRUE)))
cat(sprintf(
  '{"fills": %d, "deliveries": %.12g, "seconds": %.4f, "processors": %.4f, "peakMegabytes": %.1f, "version": "R %s.%s, data.table %s, threads: %d"}\n',
  nrow(fills), sum(fills$delivery), used[["elapsed"]], used[["user.self"]] + used[["sys.self"]], peak / 1024,
  R.version$major, R.version$minor, packageVersion("data.table"), getDTthreads()
))
