# Writes oracle.json: posterior of the share of a beta-binomial by R's adaptive quadrature of its usual form in beta
# functions, for tests/statistics/beta-binomial.test.ts. The test reads the file and needs no R. Counts are invented.
# Run in this folder: Rscript make.R    (Debian: r-base-core, r-cran-jsonlite)
library(jsonlite)

# Share m in the angle, m = sin(angle)^2, whose Jeffreys prior is flat; correlation r with a half-normal prior, cut at 1.
log_likelihood <- function(m, r, hits, units) {
  if (r < 1e-6) return(sum(dbinom(hits, units, m, log = TRUE)))
  a <- m * (1 - r) / r
  b <- (1 - m) * (1 - r) / r
  sum(lchoose(units, hits) + lbeta(hits + a, units - hits + b) - lbeta(a, b))
}
posterior <- function(hits, units, scale, level) {
  top <- -Inf
  for (angle in seq(0.02, pi / 2 - 0.02, length.out = 60)) for (r in seq(0.005, 0.95, length.out = 40)) {
    top <- max(top, log_likelihood(sin(angle)^2, r, hits, units) - r^2 / (2 * scale^2))
  }
  over_r <- function(angle, times = function(r) 1) {
    integrate(function(r) sapply(r, function(one) {
      times(one) * exp(log_likelihood(sin(angle)^2, one, hits, units) - one^2 / (2 * scale^2) - top)
    }), 0, 1 - 1e-9, rel.tol = 1e-8, subdivisions = 500, stop.on.error = FALSE)$value
  }
  weight <- function(from, to, times = function(angle) 1, times_r = function(r) 1) {
    integrate(function(angle) sapply(angle, function(one) times(one) * over_r(one, times_r)), from, to,
      rel.tol = 1e-7, subdivisions = 500
    )$value
  }
  ends <- c(1e-7, pi / 2 - 1e-7)
  whole <- weight(ends[1], ends[2])
  at <- function(p) sin(uniroot(function(angle) weight(ends[1], angle) / whole - p, ends, tol = 1e-8)$root)^2
  tail <- (1 - level) / 2
  list(
    hits = hits, units = units, scale = unbox(scale), level = unbox(level),
    share = unbox(weight(ends[1], ends[2], function(angle) sin(angle)^2) / whole),
    correlation = unbox(weight(ends[1], ends[2], times_r = identity) / whole),
    low = unbox(if (sum(hits) == 0) 0 else at(tail)), high = unbox(if (sum(hits) == sum(units)) 1 else at(1 - tail))
  )
}
cases <- list(
  posterior(c(3, 5, 0, 2), c(6, 6, 6, 6), 0.4, 0.9),
  posterior(c(3, 5, 0, 2), c(6, 6, 6, 6), 0.2, 0.9),
  posterior(c(0, 0, 0, 0, 0, 0), rep(5, 6), 0.4, 0.9),
  posterior(c(4, 4, 4), c(4, 4, 4), 0.4, 0.9),
  posterior(c(3, 3, 3, 3, 3, 3), rep(6, 6), 0.4, 0.9),
  posterior(c(0, 12, 1, 11, 0, 9, 12), rep(12, 7), 0.4, 0.9),
  posterior(c(1, 0, 2, 7, 3), c(1, 2, 9, 12, 4), 0.4, 0.95),
  posterior(c(31, 44, 40), c(50, 50, 50), 0.4, 0.9)
)
jeffreys <- expand.grid(hits = c(1, 5, 11), units = 12, level = c(0.9, 0.95))
jeffreys$low <- with(jeffreys, qbeta((1 - level) / 2, hits + 0.5, units - hits + 0.5))
jeffreys$high <- with(jeffreys, qbeta((1 + level) / 2, hits + 0.5, units - hits + 0.5))
write_json(list(made_with = list(R = unbox(R.version.string)), cases = cases, jeffreys = jeffreys),
  "oracle.json", digits = NA, na = "null", pretty = TRUE
)
