# Writes oracle.json: posteriors of small crossed models by brute force, for tests/statistics/posterior/oracle.test.ts.
# The tests read the file and need no R. Run in this folder: Rscript make.R (Debian: r-base-core, r-cran-jsonlite)
#
# Model: y = X b + Z1 u1 + Z2 u2 + e, u ~ N(0, (tau sigma)^2), p(b) = 1, p(sigma) = 1 / sigma, tau half-normal.
# The density of the two ratios is written out with the whole covariance matrix V and summed over a fine grid of
# midpoints on tau = sinh(x) / 5; given the ratios, (b, u) is t about the solution of Henderson's equations, so that
# every moment and tail below is a weighted sum of exact ones. Nothing is drawn.
# Invented fruits: varieties on picking days, and varieties on mounds of their own.
library(jsonlite)
RNGkind("Mersenne-Twister", "Inversion", "Rejection")

incidence <- function(level) {
  names <- sort(unique(level), method = "radix")
  outer(level, names, "==") * 1
}

posterior <- function(y, X, first, second, scales, points) {
  Z <- list(incidence(first), incidence(second))
  n <- length(y)
  p <- ncol(X)
  q <- sapply(Z, ncol)
  W <- cbind(X, Z[[1]], Z[[2]])
  patterns <- lapply(Z, tcrossprod)
  top <- asinh(5 * 6 * scales)
  x <- lapply(top, function(one) (seq_len(points) - 0.5) * one / points)
  tau <- lapply(x, function(one) sinh(one) / 5)
  grid <- expand.grid(i = seq_len(points), j = seq_len(points))
  means <- matrix(0, nrow(grid), ncol(W))
  scale <- array(0, nrow(grid))
  # The constant and a variety together, and the first variety against the second.
  forms <- lapply(seq_len(q[1]), function(k) replace(replace(numeric(ncol(W)), 1, 1), p + k, 1))
  forms[[q[1] + 1]] <- replace(replace(numeric(ncol(W)), p + 1, 1), p + 2, -1)
  middle <- spread <- matrix(0, nrow(grid), length(forms))
  density <- numeric(nrow(grid))
  for (row in seq_len(nrow(grid))) {
    t <- c(tau[[1]][grid$i[row]], tau[[2]][grid$j[row]])
    V <- diag(n) + t[1]^2 * patterns[[1]] + t[2]^2 * patterns[[2]]
    inverse <- chol2inv(chol(V))
    XVX <- t(X) %*% inverse %*% X
    b <- solve(XVX, t(X) %*% inverse %*% y)
    rest <- y - X %*% b
    S <- as.numeric(t(rest) %*% inverse %*% rest)
    density[row] <- -0.5 * (determinant(V)$modulus + determinant(XVX)$modulus + (n - p) * log(S)) -
      sum(t^2 / (2 * scales^2)) + sum(log(cosh(c(x[[1]][grid$i[row]], x[[2]][grid$j[row]]))))
    C <- solve(crossprod(W) + diag(c(rep(0, p), rep(1 / t[1]^2, q[1]), rep(1 / t[2]^2, q[2]))))
    estimate <- C %*% t(W) %*% y
    middle[row, ] <- sapply(forms, function(l) sum(l * estimate))
    spread[row, ] <- sqrt(S / (n - p) * sapply(forms, function(l) sum(l * (C %*% l))))
    scale[row] <- S
  }
  weight <- exp(density - max(density))
  weight <- weight / sum(weight)
  below <- function(form, value) sum(weight * pt((value - middle[, form]) / spread[, form], n - p))
  quantile <- function(form, share) {
    uniroot(function(value) below(form, value) - share, range(y) + c(-50, 50), tol = 1e-13)$root
  }
  summary <- function(form) {
    mean <- sum(weight * middle[, form])
    list(
      mean = unbox(mean),
      sd = unbox(sqrt(sum(weight * (middle[, form]^2 + spread[, form]^2 * (n - p) / (n - p - 2))) - mean^2)),
      quantiles = sapply(c(0.05, 0.5, 0.95), function(share) quantile(form, share))
    )
  }
  list(
    varieties = lapply(seq_len(q[1]), summary),
    difference = c(summary(q[1] + 1), list(above = unbox(1 - below(q[1] + 1, 0)))),
    residual_variance = unbox(sum(weight * scale) / (n - p - 2)),
    ratio_squares = c(
      sum(weight * tau[[1]][grid$i]^2),
      sum(weight * tau[[2]][grid$j]^2)
    )
  )
}

case <- function(fruits, scales, factors) {
  X <- cbind(1, fruits$age)
  run <- function(points) posterior(fruits$y, X, fruits$first, fruits$second, scales, points)
  fine <- run(120)
  # Half the points must tell the same.
  coarse <- run(60)
  off <- max(abs(unlist(fine) - unlist(coarse)))
  stopifnot(off < 1e-4)
  cat(nrow(fruits), "fruits, largest change from 60 to 120 points", off, "\n")
  c(
    list(
      y = fruits$y, age = fruits$age, names = factors, first = fruits$first, second = fruits$second, scales = scales
    ),
    fine
  )
}

fruits <- function(seed, cells, first, second, sd_first, sd_second) {
  set.seed(seed)
  a <- rnorm(length(unique(first)), 0, sd_first)[match(first, unique(first))]
  b <- rnorm(length(unique(second)), 0, sd_second)[match(second, unique(second))]
  age <- sample(-7:8, cells, replace = TRUE)
  data.frame(y = round(11 + 0.05 * age + a + b + rnorm(cells, 0, 0.9), 1), age, first, second)
}

set.seed(1)
days <- expand.grid(variety = letters[1:5], day = paste0("d", 1:6), stringsAsFactors = FALSE)
days <- days[sample(nrow(days), 23), ]
mounds <- rep(paste0("m", 1:8), c(3, 2, 3, 1, 2, 3, 1, 3))
crossed <- fruits(21, 23, days$variety, days$day, 0.8, 0.5)
nested <- fruits(22, 18, rep(letters[1:4], each = 2)[as.integer(sub("m", "", mounds))], mounds, 0.7, 0.5)

write_json(
  list(
    made_with = list(R = unbox(R.version.string)),
    cases = list(
      `varieties across picking days` = case(crossed, c(1.5, 0.5), c("variety", "day")),
      `mounds within varieties` = case(nested, c(1.5, 1), c("variety", "mound"))
    )
  ),
  "oracle.json", digits = NA
)
