# Repeatability and reproducibility of ASTM E691: the figures of test/reference/precision, a function a file.

astm.e691.glucose <- function(A, B, C, D, E, replicates, laboratories) {
  of.material <- function(y) {
    cell <- matrix(y, replicates, laboratories)
    s.xbar <- sd(colMeans(cell))
    s.r <- sqrt(mean(apply(cell, 2, var)))
    c(mean = mean(y), s_xbar = s.xbar, s_r = s.r, s_R = max(s.r, sqrt(s.xbar^2 + s.r^2 * (replicates - 1) / replicates)))
  }
  material <- list(A = A, B = B, C = C, D = D, E = E)
  figures <- sapply(material, of.material)
  setNames(c(figures), outer(rownames(figures), colnames(figures), function(figure, of) paste0(of, "_", figure)))
}
