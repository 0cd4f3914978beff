# Writes oracle.json: the studentised range by direct quadrature (not R's ptukey, after which jstat's was made), for
# tests/statistics/studentised-range.test.ts. The test reads the file and needs no R.
# Run in this folder: Rscript make.R    (Debian: r-base-core, r-cran-jsonlite)
library(jsonlite)
range_upper <- function(w, k) {
  # Upper tail of the range of k normals: 1 - k * integral of phi(z) (Phi(z) - Phi(z - w))^(k-1).
  f <- function(z) dnorm(z) * (1 - (pnorm(z) - pnorm(z - w))^(k - 1))
  k * integrate(f, -9, 9 + w, rel.tol = 1e-11, subdivisions = 1000)$value - (k - 1)
}
upper <- function(q, k, df) {
  # Over the estimate s of the standard deviation, df s^2 chi-squared.
  f <- function(s) sapply(s, function(one) range_upper(q * one, k) * 2 * df * one * dchisq(df * one^2, df))
  integrate(f, 0, 1, rel.tol = 1e-11, subdivisions = 1000)$value + integrate(f, 1, Inf, rel.tol = 1e-11, subdivisions = 1000)$value
}
tails <- expand.grid(q = c(0.7, 2, 3.5, 5, 8), k = c(2, 3, 4, 7, 12), df = c(2, 3, 4.5, 9, 20, 104))
tails$upper <- mapply(upper, tails$q, tails$k, tails$df)
# ptukey, and jstat with it, is off by 1e-4 on 2 degrees of freedom and by 3e-6 on 3; against t for k = 2 this one is not.
direct <- subset(tails, k == 2)
stopifnot(max(abs(direct$upper - 2 * pt(-direct$q / sqrt(2), direct$df))) < 1e-9)
of_r <- abs(tails$upper - ptukey(tails$q, tails$k, tails$df, lower.tail = FALSE))
stopifnot(max(of_r) < 2e-4, max(of_r[tails$df >= 4.5]) < 1e-6, max(of_r[tails$df >= 9]) < 1e-8)
write_json(list(made_with = list(R = unbox(R.version.string)), tails = tails), "oracle.json", digits = NA, pretty = TRUE)
