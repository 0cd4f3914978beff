# Writes oracle.json: mixed models fitted by lme4 (restricted likelihood) with the inference of pbkrtest on the last
# fixed column, for tests/statistics/mixed-model/oracle.test.ts. The tests read the file and need no R.
# Run in this folder: Rscript make.R
# (Debian: r-base-core, r-cran-lme4, r-cran-pbkrtest, r-cran-numderiv, r-cran-jsonlite)
# Runs differ from about the tenth digit on: the differences below are taken at the edge of rounding.
#
# Published measurements, from the copies in lme4:
#   dyestuff    Davies & Goldsmith 1972, Statistical Methods in Research and Production, 4th ed., table 6.1
#   dyestuff2   Box & Tiao 1973, Bayesian Inference in Statistical Analysis, 5.1.2 (generated; batch variance at 0)
#   penicillin  Davies & Goldsmith 1972, table 6.6
#   sleepstudy  Belenky et al. 2003, Journal of Sleep Research 12:1-12 (days 0 to 9, intercepts by subject)
suppressMessages({
  library(lme4)
  library(pbkrtest)
  library(jsonlite)
  library(numDeriv)
})
RNGkind("Mersenne-Twister", "Inversion", "Rejection")

source("polished-fit.R")

case <- function(formula, data) {
  model <- fit(formula, data)
  columns <- getME(model, "X")
  factors <- getME(model, "flist")
  spread <- as.data.frame(VarCorr(model))
  adjusted <- vcovAdj(model)
  contrast <- replace(numeric(ncol(columns)), ncol(columns), 1)
  # All fixed columns weighing 1, 2, 3 ...: a contrast that uses the whole covariance.
  mixed <- seq_len(ncol(columns))
  inference <- function(l) {
    list(
      estimate = unbox(sum(l * fixef(model))),
      se = unbox(sqrt(as.numeric(t(l) %*% adjusted %*% l))),
      df = unbox(get_Lb_ddf(model, l))
    )
  }
  list(
    y = as.vector(getME(model, "y")),
    fixed = lapply(seq_len(ncol(columns)), function(j) {
      list(name = unbox(colnames(columns)[j]), values = as.vector(columns[, j]))
    }),
    random = lapply(names(factors), function(name) {
      list(name = unbox(name), levels = as.character(factors[[name]]))
    }),
    coefficients = as.vector(fixef(model)),
    covariance = as.matrix(vcov(model)),
    components = lapply(names(factors), function(name) {
      list(name = unbox(name), variance = unbox(spread$vcov[spread$grp == name]))
    }),
    residual_variance = unbox(sigma(model)^2),
    reml_log_likelihood = unbox(as.numeric(logLik(model))),
    last_column = inference(contrast),
    weighted_columns = inference(mixed)
  )
}

# Invented gardens: mounds picked on some of the days, rain a property of the day, variety a property of the mound.
garden <- function(seed, days, mounds, chance, slope, sd_day, sd_mound, sd_rest, varieties = 1, beds = 0) {
  set.seed(seed)
  rain <- round(rexp(days, 1 / 6), 1) * rbinom(days, 1, 0.7)
  of_day <- rnorm(days, 0, sd_day)
  of_mound <- rnorm(mounds, 0, sd_mound)
  grid <- expand.grid(mound = seq_len(mounds), day = seq_len(days))
  grid <- grid[runif(nrow(grid)) < chance, ]
  # A mound gives one to three fruits a picking.
  grid <- grid[rep(seq_len(nrow(grid)), sample(1:3, nrow(grid), replace = TRUE, prob = c(6, 3, 1))), ]
  value <- 10 + slope * rain[grid$day] + of_day[grid$day] + of_mound[grid$mound] + rnorm(nrow(grid), 0, sd_rest)
  data.frame(
    y = round(value, 1),
    day = factor(paste0("d", grid$day)),
    mound = factor(paste0("m", grid$mound)),
    bed = factor(paste0("b", (grid$mound - 1) %% max(beds, 1))),
    variety = factor(paste0("v", (grid$mound - 1) %% varieties)),
    since = grid$day * 3,
    rain = rain[grid$day]
  )
}

crossed <- y ~ rain + (1 | day) + (1 | mound)
with_varieties <- y ~ variety + since + rain + (1 | day) + (1 | mound)

cases <- list(
  dyestuff = case(Yield ~ 1 + (1 | Batch), Dyestuff),
  dyestuff2 = case(Yield ~ 1 + (1 | Batch), Dyestuff2),
  penicillin = case(diameter ~ 1 + (1 | plate) + (1 | sample), Penicillin),
  sleepstudy = case(Reaction ~ Days + (1 | Subject), sleepstudy),
  `garden-few-days` = case(crossed, garden(11, 5, 6, 0.6, -0.05, 0.5, 0.6, 0.8)),
  `garden-small` = case(crossed, garden(12, 7, 8, 0.4, 0, 0.8, 0.3, 0.7)),
  `garden-middling` = case(crossed, garden(13, 12, 10, 0.45, -0.08, 0.6, 0.5, 0.9)),
  `garden-no-day-spread` = case(crossed, garden(14, 9, 9, 0.4, -0.04, 0, 0.7, 0.8)),
  `garden-no-mound-spread` = case(crossed, garden(15, 9, 9, 0.4, -0.04, 0.7, 0, 0.8)),
  `garden-no-spread-at-all` = case(crossed, garden(16, 8, 8, 0.4, 0.02, 0, 0, 1)),
  `garden-large-components` = case(crossed, garden(17, 10, 9, 0.5, -0.1, 3, 4, 0.3)),
  `garden-varieties` = case(with_varieties, garden(18, 13, 16, 0.4, -0.06, 0.5, 0.5, 0.8, varieties = 5)),
  `garden-many-varieties` = case(with_varieties, garden(19, 15, 20, 0.3, 0, 0.4, 0.4, 0.9, varieties = 9)),
  `garden-nested` = case(
    y ~ rain + (1 | mound) + (1 | bed),
    garden(20, 8, 12, 0.5, -0.03, 0, 0.8, 0.7, beds = 4)
  ),
  `garden-three-components` = case(
    y ~ since + rain + (1 | day) + (1 | mound) + (1 | bed),
    garden(21, 9, 15, 0.5, -0.05, 0.6, 0.6, 0.7, beds = 5)
  )
)

write_json(
  list(
    made_with = list(
      R = unbox(R.version.string),
      lme4 = unbox(as.character(packageVersion("lme4"))),
      pbkrtest = unbox(as.character(packageVersion("pbkrtest")))
    ),
    cases = cases
  ),
  "oracle.json", digits = NA
)
for (name in names(cases)) {
  one <- cases[[name]]
  cat(name, length(one$y), "observations; components", sapply(one$components, `[[`, "variance"), "residual",
    one$residual_variance, "se", one$last_column$se, "df", one$last_column$df, "\n")
}
