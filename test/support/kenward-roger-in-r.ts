/**
 * Fills as random effects in R, from the matrices of the single catches and not from totals: REML of
 * mass/√turns = delivery of the fill·√turns + error by R's optim, then Kenward and Roger's error and degrees of freedom, which
 * for a single mean are Φ + 2Φ²Λ and 2/A. `turns` are those of each catch, `fill` says whose it is; `y` and `squares` are the
 * estimate of each fill and what the catches scatter about it. Gives mean, both standard deviations, standard error, adjusted
 * standard error, df. To stand before the R code of a test.
 *
 * Source Kenward and Roger 1997, Biometrics 53, 983–997
 */
export const kenwardRogerInR = `
  kenward.roger <- function(turns, fill, y, squares) {
    T <- tapply(turns, fill, sum)
    within.df <- length(turns) - length(T)
    mean.of <- function(v) sum(y / v) / sum(1 / v)
    deviance <- function(logs) {
      s <- exp(logs)
      v <- s[1] + s[2] / T
      within.df * log(s[2]) + squares / s[2] + sum(log(v)) + sum((y - mean.of(v))^2 / v) + log(sum(1 / v))
    }
    start <- log(c(var(y), squares / within.df))
    for (again in 1:3) start <- optim(start, deviance, control = list(reltol = 1e-16, maxit = 5000))$par
    s <- exp(start)
    x <- sqrt(turns)
    G <- list(outer(x, x) * outer(fill, fill, "=="), diag(length(x)))
    Vi <- solve(s[1] * G[[1]] + s[2] * G[[2]])
    phi <- 1 / sum(x * Vi %*% x)
    each <- function(f) matrix(c(f(1, 1), f(2, 1), f(1, 2), f(2, 2)), 2)
    P <- -sapply(G, function(g) sum(x * Vi %*% g %*% Vi %*% x))
    Q <- each(function(i, j) sum(x * Vi %*% G[[i]] %*% Vi %*% G[[j]] %*% Vi %*% x))
    trace <- each(function(i, j) sum(diag(Vi %*% G[[i]] %*% Vi %*% G[[j]])))
    W <- 2 * solve(trace - 2 * phi * Q + phi^2 * outer(P, P))
    adjusted <- phi + 2 * phi^2 * sum(W * (Q - phi * outer(P, P)))
    c(mean.of(s[1] + s[2] / T), sqrt(s), sqrt(phi), sqrt(adjusted), 2 / (phi^2 * sum(W * outer(P, P))))
  }
`;
