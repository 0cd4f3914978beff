# Writes oracle.json for tests/statistics/penalised-logistic: Firth's estimates by brglm2 (type "AS_mean"), profile
# intervals by R's own optimisers on log likelihood + 0.5 log |X'WX| written out anew, glm's maximum likelihood. The
# test reads the file and needs no R. `endometrial` comes with brglm2 (Heinze & Schemper 2002, Statistics in Medicine
# 21:2409-2419); storms are invented.
# Run in this folder: Rscript make.R    (Debian: r-base-core, r-cran-jsonlite, r-cran-brglm2)
library(jsonlite)
library(brglm2)

penalised <- function(beta, X, hits, units) {
  eta <- as.vector(X %*% beta)
  p <- plogis(eta)
  value <- sum(hits * plogis(eta, log.p = TRUE) + (units - hits) * plogis(-eta, log.p = TRUE))
  value + 0.5 * as.numeric(determinant(crossprod(X, X * (units * p * (1 - p))))$modulus)
}
profile_at <- function(X, hits, units, column, value, start) {
  if (ncol(X) == 1) return(penalised(value, X, hits, units))
  on_free <- function(free) -penalised(replace(replace(numeric(ncol(X)), -column, free), column, value), X, hits, units)
  found <- optim(start[-column], on_free, method = "BFGS", control = list(reltol = 1e-15, maxit = 5000))
  found <- optim(found$par, on_free, method = "Nelder-Mead", control = list(reltol = 1e-15, maxit = 5000))
  found <- optim(found$par, on_free, method = "BFGS", control = list(reltol = 1e-15, maxit = 5000))
  -found$value
}
interval <- function(X, hits, units, column, best, se, level) {
  top <- penalised(best, X, hits, units)
  lack <- function(value) 2 * (top - profile_at(X, hits, units, column, value, best)) - qchisq(level, 1)
  end <- function(sign) {
    far <- best[column] + sign * se[column]
    while (lack(far) < 0) far <- best[column] + 1.6 * (far - best[column])
    uniroot(lack, sort(c(best[column], far)), tol = 1e-8)$root
  }
  list(column = unbox(column - 1), level = unbox(level), low = unbox(end(-1)), high = unbox(end(1)))
}
case <- function(name, X, hits, units, levels = c(0.9, 0.95), finite = TRUE) {
  model <- glm(cbind(hits, units - hits) ~ X - 1,
    family = binomial(), method = "brglmFit", type = "AS_mean",
    control = list(epsilon = 1e-12, maxit = 1000)
  )
  best <- unname(coef(model))
  se <- unname(sqrt(diag(vcov(model))))
  ml <- if (finite) unname(coef(glm(cbind(hits, units - hits) ~ X - 1, family = binomial(), epsilon = 1e-14))) else NULL
  list(
    name = unbox(name),
    rows = lapply(seq_len(nrow(X)), function(i) {
      list(columns = as.vector(X[i, ]), hits = unbox(hits[i]), units = unbox(units[i]))
    }),
    coefficients = best, standard_errors = se, maximum_likelihood = ml,
    intervals = unlist(lapply(levels, function(level) {
      lapply(seq_len(ncol(X)), function(column) interval(X, hits, units, column, best, se, level))
    }), recursive = FALSE)
  )
}
data("endometrial", package = "brglm2")
endo <- unname(model.matrix(~ NV + PI + EH, endometrial))
storms <- data.frame(
  dry = c(4, 12, 7, 20, 15, 9, 3), rain = c(22, 35, 61, 28, 40, 25, 30),
  units = c(9, 12, 6, 14, 10, 8, 11), hits = c(0, 3, 1, 6, 2, 1, 0)
)
parted <- data.frame(dry = c(2, 3, 5, 8, 9), units = c(6, 7, 5, 6, 8), hits = c(0, 0, 0, 6, 8))
cases <- list(
  case("endometrial", endo, endometrial$HG, rep(1, nrow(endometrial)), 0.95, finite = FALSE),
  case("two by two", cbind(1, c(0, 1)), c(7, 0), c(363, 22), finite = FALSE),
  case("storms by dryness", cbind(1, storms$dry), storms$hits, storms$units),
  case("storms by dryness and rain", cbind(1, storms$dry, storms$rain), storms$hits, storms$units),
  case("parted by dryness", cbind(1, parted$dry), parted$hits, parted$units, finite = FALSE),
  case("no slope", cbind(rep(1, 5)), c(0, 0, 1, 0, 0), c(3, 4, 5, 6, 7))
)
write_json(
  list(
    made_with = list(R = unbox(R.version.string), brglm2 = unbox(as.character(packageVersion("brglm2")))),
    cases = cases
  ),
  "oracle.json", digits = NA, null = "null"
)
for (one in cases) cat(one$name, one$coefficients, "\n")
