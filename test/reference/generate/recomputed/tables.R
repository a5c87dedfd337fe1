# Critical values and factors printed in tables: the figures of test/reference/tables, a function a file. With critical-values.R.

grubbs.table <- function(n, alpha) setNames(grubbs.critical(n, alpha), paste0("n", n))
grubbs.05 <- grubbs.table
grubbs.025 <- grubbs.table

generalized.esd.lambda.05 <- function(n, alpha) {
  step <- expand.grid(i = 1:10, n = n)
  setNames(esd.lambda(step$i, step$n, alpha), sprintf("n%d_i%d", step$n, step$i))
}

tolerance.one.sided.95.95 <- function(n, p, conf) setNames(one.sided.factor(n, p, conf), paste0("n", n))

tolerance.two.sided.95.95 <- function(n, p, conf) c(
  setNames(sapply(n, two.sided.factor, p = p, conf = conf), paste0("n", n)),
  setNames(howe.factor(n, p, conf), paste0("howe_n", n))
)

dunnett.two.sided.05 <- function(df, k, alpha) {
  cell <- expand.grid(k = k, df = c(df, Inf))
  point <- function(k, df)
    uniroot(function(t) dunnett.tail(t, rep(sqrt(0.5), k), df) - alpha, c(1.5, 5), tol = 1e-14)$root
  setNames(mapply(point, cell$k, cell$df), sprintf("df%s_k%d", cell$df, as.integer(cell$k)))
}
