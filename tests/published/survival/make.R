# Writes oracle.json: Kaplan-Meier and Turnbull estimates of generated registers of fruit by R's survival package, for
# tests/statistics/survival/oracle.test.ts. The test reads the file and needs no R.
# Run in this folder: Rscript make.R    (Debian: r-base-core, r-cran-survival, r-cran-jsonlite)
library(survival)
library(jsonlite)
set.seed(20250812)

# Days from flower to ripe of n fruits; a share of them lost before.
truth <- function(n) round(rnorm(n, 40, 4))

right_register <- function(n, lost) {
  ripe <- truth(n)
  gone <- ifelse(runif(n) < lost, round(runif(n, 28, 46)), Inf)
  data.frame(low = pmin(ripe, gone), high = ifelse(ripe <= gone, ripe, NA))
}

# Looked at every `every` days from a day of its own; some exact, some lost, some over-ripe at the first look.
looks_register <- function(n, every, lost, exact) {
  rows <- lapply(seq_len(n), function(i) {
    ripe <- round(rnorm(1, 40, 4)) + 0.5
    looks <- seq(sample(26:42, 1), 60, by = every)
    if (runif(1) < exact) return(data.frame(low = ripe - 0.5, high = ripe - 0.5))
    if (runif(1) < lost) looks <- looks[looks <= max(looks[1], runif(1, 30, 46))]
    before <- looks[looks < ripe]
    after <- looks[looks >= ripe]
    data.frame(low = if (length(before)) max(before) else NA, high = if (length(after)) min(after) else NA)
  })
  do.call(rbind, rows)
}

kaplan_meier <- function(data) {
  fit <- survfit(Surv(low, ifelse(is.na(high), 0, 1), type = "right") ~ 1, data, conf.type = "log-log", conf.int = 0.9)
  table <- summary(fit)$table
  at <- fit$n.event > 0
  list(
    observations = data,
    steps = data.frame(
      time = fit$time[at], at_risk = fit$n.risk[at], events = fit$n.event[at], remaining = fit$surv[at],
      se = ifelse(is.finite(fit$std.err[at]), fit$surv[at] * fit$std.err[at], NA)
    ),
    quartiles = as.numeric(quantile(fit, c(0.25, 0.5, 0.75), conf.int = FALSE)),
    median = unbox(as.numeric(table["median"])),
    low = unbox(as.numeric(table["0.9LCL"])),
    high = unbox(as.numeric(table["0.9UCL"]))
  )
}

# survfit stops when a round moves the curve by less than 5e-5. `polished` goes on from its jumps by Turnbull's own
# iteration until a round moves no jump by 1e-14.
turnbull <- function(data) {
  fit <- survfit(Surv(low, high, type = "interval2") ~ 1, data)
  jumps <- -diff(c(1, fit$surv))
  times <- c(fit$time, Inf)
  mass <- pmax(0, c(jumps, fit$surv[length(fit$surv)]))
  low <- ifelse(is.na(data$low), -Inf, data$low)
  high <- ifelse(is.na(data$high), Inf, data$high)
  covers <- outer(seq_along(low), seq_along(times), function(i, j) {
    (times[j] > low[i] & times[j] <= high[i]) | (low[i] == high[i] & times[j] == low[i])
  })
  survfit_likelihood <- sum(log(covers %*% mass))
  rounds <- 0
  repeat {
    chance <- as.vector(covers %*% mass)
    new <- mass * as.vector(crossprod(covers, 1 / chance)) / nrow(data)
    moved <- max(abs(new - mass))
    mass <- new
    rounds <- rounds + 1
    if (moved < 1e-14 || rounds == 2e6) break
  }
  list(
    observations = data,
    survfit = data.frame(time = fit$time, remaining = fit$surv),
    survfit_log_likelihood = unbox(survfit_likelihood),
    polished = data.frame(time = fit$time, remaining = pmax(0, 1 - cumsum(mass)[seq_along(fit$time)])),
    log_likelihood = unbox(sum(log(covers %*% mass))),
    rounds = unbox(rounds)
  )
}

right <- list(
  `none lost` = right_register(13, 0), `even, none lost` = right_register(12, 0),
  `few lost` = right_register(20, 0.2), `half lost` = right_register(24, 0.5), `most lost` = right_register(15, 0.9),
  `all lost` = data.frame(low = c(30, 33, 41), high = NA_real_),
  `one fruit` = right_register(1, 0), `three` = right_register(3, 0.3), `large` = right_register(150, 0.3),
  `ties` = data.frame(low = c(38, 38, 38, 40, 40, 41, 41, 44), high = c(38, 38, NA, 40, 40, NA, 41, NA))
)
looks <- list(
  `weekly` = looks_register(20, 7, 0, 0), `weekly, some lost` = looks_register(25, 7, 0.3, 0),
  `every third day` = looks_register(30, 3, 0.1, 0), `daily` = looks_register(15, 1, 0.2, 0),
  `some exact` = looks_register(25, 5, 0.2, 0.3), `mostly exact` = looks_register(18, 4, 0.2, 0.8),
  `fortnightly` = looks_register(40, 14, 0.2, 0.1),
  `large` = looks_register(120, 4, 0.2, 0.1),
  # Ends that touch: an exact time at the end of one look, at the beginning of another, and at a loss.
  `ends that touch` = data.frame(low = c(35, 38, 38, 41, NA, 38, 35), high = c(38, 38, 41, NA, 38, NA, 41)),
  # A place that Newton's method empties on its way and has to fill again.
  `emptied too soon` = data.frame(
    low = c(11, 3, 4, 2, 16, 7, 0, 7, 18, 15, 9, 0), high = c(16, 9, 6, 8, 22, 10, 6, 12, 19, 20, 13, 1)
  )
)

oracle <- list(
  made_with = list(
    R = unbox(R.version.string), survival = unbox(as.character(packageVersion("survival"))),
    jsonlite = unbox(as.character(packageVersion("jsonlite")))
  ),
  level = unbox(0.9),
  right = lapply(right, kaplan_meier),
  looks = lapply(looks, turnbull),
  freireich = kaplan_meier(data.frame(
    low = c(6, 6, 6, 6, 7, 9, 10, 10, 11, 13, 16, 17, 19, 20, 22, 23, 25, 32, 32, 34, 35),
    high = c(6, 6, 6, NA, 7, NA, 10, NA, NA, 13, 16, NA, NA, NA, 22, 23, NA, NA, NA, NA, NA)
  ))
)
write_json(oracle, "oracle.json", digits = NA, na = "null", pretty = TRUE)
