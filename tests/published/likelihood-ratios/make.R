# Writes oracle.json for tests/statistics/signs/likelihood-ratio.test.ts: quantiles of the ratio of two independent
# Jeffreys posteriors by R's adaptive quadrature over quantiles of the second share. The test needs no R. Counts
# invented.
# Run in this folder: Rscript make.R    (Debian: r-base-core, r-cran-jsonlite)
library(jsonlite)
below <- function(r, k1, n1, k2, n2) {
  inside <- function(u) pbeta(pmin(1, r * qbeta(u, k2 + 0.5, n2 - k2 + 0.5)), k1 + 0.5, n1 - k1 + 0.5)
  # The corner at r * share = 1 splits the range.
  corner <- if (r > 1) pbeta(1 / r, k2 + 0.5, n2 - k2 + 0.5) else 1
  part <- function(from, to) if (to > from) integrate(inside, from, to, rel.tol = 1e-10, subdivisions = 2000)$value else 0
  part(0, corner) + (1 - corner)
}
case <- function(k1, n1, k2, n2, level) {
  at <- function(p) exp(uniroot(function(x) below(exp(x), k1, n1, k2, n2) - p, c(-20, 20), tol = 1e-11)$root)
  tail <- (1 - level) / 2
  list(
    yes = list(shown = unbox(k1), looked = unbox(n1)), no = list(shown = unbox(k2), looked = unbox(n2)),
    level = unbox(level), ratio = unbox(at(0.5)), low = unbox(if (k1 == 0) 0 else at(tail)), high = unbox(at(1 - tail)),
    points_to_yes = unbox(1 - below(1, k1, n1, k2, n2))
  )
}
cases <- list(
  case(6, 7, 1, 3, 0.9), case(12, 14, 2, 6, 0.9), case(26, 30, 4, 10, 0.9), case(8, 8, 3, 6, 0.9),
  case(5, 9, 0, 6, 0.9), case(0, 9, 2, 6, 0.9), case(9, 9, 6, 6, 0.9), case(20, 31, 18, 29, 0.95),
  case(670, 744, 202, 842, 0.95), case(1, 1, 0, 1, 0.9)
)
write_json(list(made_with = list(R = unbox(R.version.string)), cases = cases), "oracle.json", digits = NA, pretty = TRUE)
