# Writes oracle.json: the fewest seeds for a number of plants, by R's pbinom and by exact sums of the beta-binomial,
# for tests/statistics/seeds-to-sow.test.ts. The test reads the file and needs no R.
# Run in this folder: Rscript make.R    (Debian: r-base-core, r-cran-jsonlite)
library(jsonlite)
most <- 1000

enough_binomial <- function(n, wanted, rate) pbinom(wanted - 1, n, rate, lower.tail = FALSE)

# P(X >= wanted) for X beta-binomial of n after k of m came up, Jeffreys' prior: the long sum over the upper tail.
enough_predictive <- function(n, wanted, k, m) {
  if (n < wanted) return(0)
  x <- wanted:n
  sum(exp(lchoose(n, x) + lbeta(x + k + 0.5, n - x + m - k + 0.5) - lbeta(k + 0.5, m - k + 0.5)))
}

# The same as the mean of the binomial over the posterior, by quadrature; on the scale of the quantile, where it is smooth.
by_quadrature <- function(n, wanted, k, m) {
  at <- function(u) enough_binomial(n, wanted, qbeta(u, k + 0.5, m - k + 0.5))
  integrate(at, 0, 1, rel.tol = 1e-9, subdivisions = 2000)$value
}

fewest <- function(chance, enough) {
  seeds <- 1:most
  reached <- vapply(seeds, enough, 0)
  # No case may turn on the last digits.
  stopifnot(all(abs(reached - chance) > 1e-9))
  if (any(reached >= chance)) min(which(reached >= chance)) else NA
}

binomial <- expand.grid(wanted = c(1, 2, 3, 5, 12, 40, 150), rate = c(0.05, 0.35, 0.7, 0.82, 0.96), chance = c(0.8, 0.9, 0.95))
binomial$seeds <- mapply(function(wanted, rate, chance) fewest(chance, function(n) enough_binomial(n, wanted, rate)),
  binomial$wanted, binomial$rate, binomial$chance)

tests <- data.frame(came_up = c(0, 1, 3, 5, 7, 9, 10, 18, 20, 41, 85), sown = c(10, 5, 10, 5, 10, 10, 10, 20, 20, 50, 100))
predictive <- merge(tests, expand.grid(wanted = c(1, 2, 6, 20, 60), chance = c(0.8, 0.9, 0.95)))
predictive$seeds <- mapply(function(wanted, chance, k, m) fewest(chance, function(n) enough_predictive(n, wanted, k, m)),
  predictive$wanted, predictive$chance, predictive$came_up, predictive$sown)

for (row in which(!is.na(predictive$seeds))) with(predictive[row, ], {
  stopifnot(abs(enough_predictive(seeds, wanted, came_up, sown) - by_quadrature(seeds, wanted, came_up, sown)) < 1e-6)
})

# A test so large that the rate is all but known.
large <- expand.grid(wanted = c(1, 4, 25, 100), rate = c(0.3, 0.7, 0.9), chance = c(0.8, 0.95))
large$binomial <- mapply(function(wanted, rate, chance) fewest(chance, function(n) enough_binomial(n, wanted, rate)),
  large$wanted, large$rate, large$chance)

oracle <- list(
  made_with = list(R = unbox(R.version.string), jsonlite = unbox(as.character(packageVersion("jsonlite")))),
  binomial = binomial, predictive = predictive, large = large
)
write_json(oracle, "oracle.json", digits = NA, na = "null", pretty = TRUE)
