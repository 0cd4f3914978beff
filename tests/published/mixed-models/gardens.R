# Writes gardens.json: twenty invented unbalanced gardens fitted by lme4 (restricted likelihood, REML), for
# tests/statistics/mixed-model/gardens.test.ts. The tests read the file and need no R.
# Run in this folder: Rscript gardens.R
# (Debian: r-base-core, r-cran-lme4, r-cran-numderiv, r-cran-jsonlite)
#
# Season is fixed; variety, variety in a season, mound in a season and, in some gardens, picking day are random. Each
# variety is grown for a run of seasons (newcomers, dropouts), mounds and fruits are as many as chance gives.
suppressMessages({
  library(lme4)
  library(jsonlite)
  library(numDeriv)
})
RNGkind("Mersenne-Twister", "Inversion", "Rejection")
source("polished-fit.R")

garden <- function(seed, varieties, seasons, mounds, fruits, days, sd) {
  set.seed(seed)
  first <- sample(seasons, varieties, replace = TRUE, prob = c(4, rep(1, seasons - 1)))
  last <- pmax(first, sample(seasons, varieties, replace = TRUE, prob = c(rep(1, seasons - 1), 4)))
  rows <- do.call(rbind, lapply(seq_len(varieties), function(v) {
    do.call(rbind, lapply(first[v]:last[v], function(s) {
      # A variety may be left out for a season, but not for good.
      if (s > first[v] && runif(1) < 0.15) {
        return(NULL)
      }
      do.call(rbind, lapply(seq_len(sample(mounds, 1)), function(m) {
        n <- sample(fruits, 1)
        data.frame(variety = v, season = s, mound = m, day = sample(max(days, 1), n, replace = TRUE))
      }))
    }))
  }))
  rows$variety <- factor(paste0("v", rows$variety))
  rows$mound <- factor(paste0(rows$variety, ".", rows$season, ".", rows$mound))
  rows$variety_season <- factor(paste0(rows$variety, ".", rows$season))
  rows$day <- factor(paste0("d", rows$season, ".", rows$day))
  rows$season <- factor(paste0("s", rows$season))
  of <- function(levels, spread) rnorm(nlevels(levels), 0, spread)[levels]
  rows$y <- round(
    5 + rnorm(nlevels(rows$season), 0, 0.8)[rows$season] + of(rows$variety, sd[1]) + of(rows$variety_season, sd[2]) +
      of(rows$mound, sd[3]) + (if (days > 0) of(rows$day, sd[4]) else 0) + rnorm(nrow(rows), 0, 1), 2
  )
  rows
}

case <- function(...) {
  data <- garden(...)
  many <- nlevels(data$season) > 1
  terms <- c("variety", if (many) "variety_season", "mound", if (list(...)$days > 0) "day")
  formula <- as.formula(paste(
    "y ~", if (many) "season" else "1", "+", paste0("(1 | ", terms, ")", collapse = " + ")
  ))
  model <- fit(formula, data)
  spread <- as.data.frame(VarCorr(model))
  columns <- getME(model, "X")
  effects <- ranef(model)
  of <- function(name) setNames(as.list(effects[[name]][[1]]), rownames(effects[[name]]))
  list(
    y = data$y,
    fixed = lapply(seq_len(ncol(columns)), function(j) {
      list(name = unbox(colnames(columns)[j]), values = as.vector(columns[, j]))
    }),
    random = lapply(terms, function(name) list(name = unbox(name), levels = as.character(data[[name]]))),
    coefficients = unname(fixef(model)),
    standard_errors = unname(sqrt(diag(as.matrix(vcov(model))))),
    components = lapply(terms, function(name) {
      list(name = unbox(name), variance = unbox(spread$vcov[spread$grp == name]))
    }),
    residual_variance = unbox(sigma(model)^2),
    reml_criterion = unbox(REMLcrit(model)),
    effects = lapply(Filter(function(name) name != "mound" && name != "day", terms), function(name) {
      list(name = unbox(name), of = lapply(of(name), unbox))
    })
  )
}

# Spreads of variety, variety in a season, mound and day; fruits scatter by 1.
plans <- list(
  list(seed = 41, varieties = 3, seasons = 2, mounds = 2:4, fruits = 2:6, days = 0, sd = c(1, 0.5, 0.5)),
  list(seed = 2, varieties = 4, seasons = 1, mounds = 2:4, fruits = 2:8, days = 0, sd = c(1, 0, 0.6)),
  list(seed = 3, varieties = 5, seasons = 3, mounds = 1:3, fruits = 1:6, days = 0, sd = c(1.2, 0.6, 0.5)),
  list(seed = 24, varieties = 6, seasons = 4, mounds = 1:4, fruits = 1:8, days = 0, sd = c(0.8, 0.8, 0.4)),
  list(seed = 25, varieties = 7, seasons = 5, mounds = 1:3, fruits = 1:5, days = 5, sd = c(1, 0.5, 0.5, 0.5)),
  list(seed = 6, varieties = 8, seasons = 6, mounds = 1:2, fruits = 1:4, days = 4, sd = c(1, 0.7, 0.6, 0.6)),
  list(seed = 7, varieties = 10, seasons = 6, mounds = 1:2, fruits = 1:3, days = 0, sd = c(1.5, 0.6, 0.5)),
  list(seed = 8, varieties = 3, seasons = 6, mounds = 1:4, fruits = 1:5, days = 6, sd = c(0.7, 0.9, 0.5, 0.7)),
  list(seed = 9, varieties = 4, seasons = 5, mounds = 1:4, fruits = 1:8, days = 0, sd = c(0, 0.8, 0.5)),
  list(seed = 10, varieties = 5, seasons = 4, mounds = 1:4, fruits = 1:6, days = 0, sd = c(1, 0, 0.6)),
  list(seed = 11, varieties = 6, seasons = 3, mounds = 1:4, fruits = 1:6, days = 0, sd = c(1, 0.6, 0)),
  list(seed = 12, varieties = 7, seasons = 2, mounds = 1:4, fruits = 1:6, days = 5, sd = c(1, 0.6, 0.5, 0)),
  list(seed = 13, varieties = 8, seasons = 3, mounds = 1:4, fruits = 1:5, days = 4, sd = c(0, 0, 0.7, 0.5)),
  list(seed = 14, varieties = 9, seasons = 2, mounds = 1:3, fruits = 1:5, days = 6, sd = c(0.8, 0.5, 0, 0)),
  list(seed = 15, varieties = 10, seasons = 1, mounds = 1:4, fruits = 1:8, days = 6, sd = c(0.8, 0, 0.4, 0.6)),
  list(seed = 16, varieties = 5, seasons = 3, mounds = 1:3, fruits = 1:4, days = 0, sd = c(0, 0, 0)),
  list(seed = 17, varieties = 6, seasons = 5, mounds = 1:2, fruits = 1:8, days = 3, sd = c(3, 2, 1.5, 1)),
  list(seed = 18, varieties = 9, seasons = 4, mounds = 1:2, fruits = 2:4, days = 8, sd = c(0.5, 0.4, 0.4, 0.4)),
  list(seed = 19, varieties = 3, seasons = 3, mounds = 2:4, fruits = 4:8, days = 7, sd = c(0.4, 0.3, 0.3, 0.9)),
  list(seed = 20, varieties = 10, seasons = 4, mounds = 1:3, fruits = 1:4, days = 6, sd = c(1, 0.8, 0.6, 0.5))
)
gardens <- lapply(plans, function(plan) {
  one <- do.call(case, plan)
  cat(plan$seed, length(one$y), "fruits; components", sapply(one$components, `[[`, "variance"), "residual",
    one$residual_variance, "\n")
  one
})

write_json(
  list(
    made_with = list(R = unbox(R.version.string), lme4 = unbox(as.character(packageVersion("lme4")))),
    gardens = gardens
  ),
  "gardens.json", digits = NA
)
