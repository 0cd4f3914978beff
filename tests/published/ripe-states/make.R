# Writes oracle.json: chances, likelihoods and their maxima for generated cuts of fruit, by R's own distribution functions,
# numerical integration, survival::survreg and optim, for tests/statistics/ripe-states/oracle.test.ts. The test reads the
# file and needs no R.
# Run in this folder: Rscript make.R    (Debian: r-base-core, r-cran-survival, r-cran-jsonlite)
library(survival)
library(jsonlite)
set.seed(20250819)

states <- c("U", "J", "P", "O")
bounds <- function(state, just, prime) {
  switch(state, U = c(0, Inf), J = c(-just, 0), P = c(-just - prime, -just), O = c(-Inf, -just - prime))
}

# Chance of a state at one time, and averaged over a span of times by integration.
at_time <- function(t, state, m, s, just, prime) {
  b <- (log(t) + bounds(state, just, prime) - m) / s
  if (b[1] > 0) pnorm(b[1], lower.tail = FALSE) - pnorm(b[2], lower.tail = FALSE) else pnorm(b[2]) - pnorm(b[1])
}
over_span <- function(from, to, state, m, s, just, prime) {
  if (from == to) return(at_time(to, state, m, s, just, prime))
  integrate(function(t) vapply(t, at_time, 0, state, m, s, just, prime), from, to, rel.tol = 1e-10)$value / (to - from)
}
# The same together with a call of "not ripe" some time before, wrong so often: over the fruit's own time of ripeness.
with_call <- function(from, to, state, earlier, wrong, m, s, just, prime) {
  one <- function(t) {
    b <- if (is.na(state)) c(-Inf, Inf) else log(t) + bounds(state, just, prime)
    call <- if (t > earlier) log(t - earlier) else -Inf
    part <- function(low, high) max(0, pnorm(high, m, s) - pnorm(low, m, s))
    (1 - wrong) * part(max(b[1], call), b[2]) + wrong * part(b[1], min(b[2], call))
  }
  if (from == to) return(one(to))
  steps <- 20000
  mean(vapply(from + (to - from) * (seq_len(steps) - 0.5) / steps, one, 0))
}

chances <- rbind(
  expand.grid(from = 36, to = c(36, 37, 44), state = states, m = log(c(34, 40)), s = c(0.03, 0.12), just = 0.05, prime = 0.13),
  expand.grid(from = c(0, 12), to = c(60, 30), state = states, m = log(40), s = 0.1, just = 0.04, prime = 0.2)
)
chances$state <- as.character(chances$state)
chances$chance <- mapply(over_span, chances$from, chances$to, chances$state, chances$m, chances$s, chances$just, chances$prime)
calls <- expand.grid(
  from = 38, to = c(38, 39, 46), state = c(states, NA), earlier = c(0, 2, 6), wrong = c(0, 0.2), m = log(38), s = 0.09,
  just = 0.06, prime = 0.14
)
calls$state <- as.character(calls$state)
calls$chance <- mapply(
  with_call, calls$from, calls$to, calls$state, calls$earlier, calls$wrong, calls$m, calls$s, calls$just, calls$prime
)

# Invented cuts. Times are rounded, so that the file holds what R had.
cuts <- function(middles, each, s, just, prime, span) {
  variety <- rep(names(middles), each)
  ripe <- rnorm(length(variety), middles[variety], s)
  t <- round(exp(mean(middles) + runif(length(variety), -0.3, 0.35)), 2)
  since <- log(t) - ripe
  state <- ifelse(since < 0, "U", ifelse(since < just, "J", ifelse(since < just + prime, "P", "O")))
  from <- if (span == 0) t else pmax(0, round(t - span * runif(length(t)), 2))
  data.frame(variety, from, to = from + span, state)
}

# Ordered probit with a mean for each variety, by optim, polished by Newton steps on numerical derivatives.
likeliest <- function(data) {
  names <- sort(unique(data$variety))
  minus <- function(p) {
    m <- setNames(p[seq_along(names)], names)
    e <- exp(p[length(names) + 1:3])
    -sum(log(pmax(1e-300, mapply(over_span, data$from, data$to, data$state, m[data$variety], e[1], e[2], e[3]))))
  }
  start <- c(rep(log(mean(data$to)), length(names)), log(c(0.1, 0.08, 0.15)))
  fit <- optim(start, minus, method = "Nelder-Mead", control = list(maxit = 5000, reltol = 1e-13))
  for (round in 1:3) fit <- optim(fit$par, minus, method = "BFGS", control = list(maxit = 500, reltol = 1e-15))
  e <- exp(fit$par[length(names) + 1:3])
  list(
    cut = data, middles = as.list(setNames(fit$par[seq_along(names)], names)), spread = e[1], just = e[2], prime = e[3],
    log_likelihood = -fit$value
  )
}

# Ripe or not only: a log-normal regression with times left and right of the cut.
of_variety <- function(data) if (length(unique(data$variety)) > 1) "variety - 1" else "1"
named <- function(fit, data) as.list(setNames(unname(coef(fit)), sort(unique(data$variety))))
ripe_or_not <- function(data) {
  unripe <- data$state == "U"
  fit <- survreg(
    as.formula(paste("Surv(ifelse(unripe, to, NA), ifelse(unripe, NA, to), type = 'interval2') ~", of_variety(data))),
    data = cbind(data, unripe), dist = "lognormal", control = list(rel.tolerance = 1e-12, maxiter = 200)
  )
  list(
    cut = data, middles = named(fit, data), spread = fit$scale,
    log_likelihood = fit$loglik[2]
  )
}

# Widths known: left, right and between.
known_widths <- function(data, just, prime) {
  b <- t(vapply(data$state, bounds, c(0, 0), just, prime))
  low <- data$to * exp(b[, 1])
  high <- data$to * exp(b[, 2])
  fit <- survreg(
    as.formula(paste("Surv(ifelse(low == 0, NA, low), ifelse(is.infinite(high), NA, high), type = 'interval2') ~", of_variety(data))),
    data = cbind(data, low, high), dist = "lognormal", control = list(rel.tolerance = 1e-12, maxiter = 200)
  )
  list(
    cut = data, just = just, prime = prime,
    middles = named(fit, data), spread = fit$scale
  )
}

one <- cuts(c(a = log(40)), 40, 0.1, 0.06, 0.14, 0)
three <- cuts(c(a = log(36), b = log(40), c = log(43)), 20, 0.1, 0.06, 0.14, 0)
spans <- cuts(c(a = log(36), b = log(42)), 25, 0.1, 0.06, 0.14, 6)

# The posterior of a few fruits of one variety by brute force: sums over a fine grid of all four unknowns.
brute <- function(data, spread_scale, just_median, prime_median, log_sd) {
  s <- seq(0.004, 0.75, length.out = 90)
  w <- exp(log(just_median) + log_sd * seq(-3.2, 3.2, length.out = 33))
  v <- exp(log(prime_median) + log_sd * seq(-3.2, 3.2, length.out = 33))
  m <- seq(log(min(data$to)) - 1.2, log(max(data$to)) + 1.2, length.out = 220)
  x <- log(data$to)
  total <- 0
  sums <- numeric(6)
  mass <- numeric(length(m))
  for (si in s) for (wi in w) {
    ripe <- pnorm(outer(x, m, "-") / si)
    prime <- pnorm((outer(x, m, "-") - wi) / si)
    for (vi in v) {
      over <- pnorm((outer(x, m, "-") - wi - vi) / si)
      chance <- rbind(1 - ripe, ripe - prime, prime - over, over)
      rows <- cbind(match(data$state, states), seq_along(x))
      like <- rep(1, length(m))
      for (k in seq_along(x)) like <- like * chance[(rows[k, 1] - 1) * length(x) + k, ]
      # Equal steps of log width and log-normal priors: the density is that of the log.
      like <- like * exp(-(si / spread_scale)^2 / 2 - (log(wi / just_median)^2 + log(vi / prime_median)^2) / log_sd^2 / 2)
      mass <- mass + like
      all <- sum(like)
      total <- total + all
      sums <- sums + c(sum(like * m), sum(like * m^2), all * si, all * wi, all * vi, all * si^2)
    }
  }
  e <- sums / total
  quantiles <- approx((cumsum(mass) - mass / 2) / total, m, c(0.05, 0.5, 0.95), ties = "ordered")$y
  list(
    cut = data, middle = e[1], middle_sd = sqrt(e[2] - e[1]^2), spread = e[3], just = e[4], prime = e[5],
    middle_quantiles = quantiles
  )
}
few <- cuts(c(a = log(40)), 8, 0.1, 0.06, 0.14, 0)
more <- cuts(c(a = log(40)), 20, 0.08, 0.06, 0.14, 0)

write_json(
  list(
    made_with = list(R = R.version.string, survival = as.character(packageVersion("survival"))),
    chances = chances, calls = calls,
    likeliest = lapply(list(`one variety` = one, `three varieties` = three, `set within six days` = spans), likeliest),
    ripe_or_not = lapply(list(`one variety` = one, `three varieties` = three), ripe_or_not),
    known_widths = lapply(list(`one variety` = one, `three varieties` = three), known_widths, 0.06, 0.14),
    brute = lapply(list(`eight fruits` = few, `twenty fruits` = more), brute, 0.15, 0.05, 0.12, 0.7)
  ),
  "oracle.json", digits = NA, auto_unbox = TRUE, na = "null"
)
