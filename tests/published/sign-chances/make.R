# Writes oracle.json for tests/statistics/signs/ripe-chance.test.ts: the chance of a fruit by weighted draws from the
# exact posterior (a million from a multivariate t around its peak), the model written out anew from its description.
# Gardens are invented. The test reads the file and needs no R.
# Run in this folder: Rscript make.R    (Debian: r-base-core, r-cran-jsonlite)
library(jsonlite)
DRAWS <- 1e6
SPREADS <- c(constant = 1.5, age = 1.5, unknown = 0.5, signs = 3, variety = 0.5, season = 0.7)

score <- function(signs, usual) {
  told <- !is.na(signs)
  if (!any(told)) return(0)
  J <- length(signs)
  L <- sum(told)
  sum(signs[told] - usual[told]) * (1 + (J - 1) * 0.3) / (1 + (L - 1) * 0.3) / J
}
garden <- function(seed, per_season, seasons, varieties, signs, unlooked, undated, only = NULL) {
  set.seed(seed)
  n <- per_season * seasons
  data <- data.frame(
    season = paste("season", rep(seq_len(seasons), each = per_season)),
    variety = paste("variety", sample(varieties, n, TRUE)),
    days = pmax(20, round(rnorm(n, 39, 4.5)))
  )
  margin <- data$days - 38 - rnorm(n, 0, 3)
  data$answer <- if (is.null(only)) margin > 0 else rep(only, n)
  shown <- sapply(seq_len(signs), function(j) 0.2 * margin + rnorm(n) > 0.4 * (j - 2))
  shown[runif(n * signs) < unlooked] <- NA
  data$days[runif(n) < undated] <- NA
  list(data = data, shown = shown + 0)
}
case <- function(name, made, asked, level = 0.9) {
  data <- made$data
  shown <- made$shown
  usual <- apply(shown, 2, function(one) (sum(one, na.rm = TRUE) + 0.5) / (sum(!is.na(one)) + 1))
  logs <- log(data$days)
  has_ages <- any(!is.na(logs))
  spread <- max(sd(logs, na.rm = TRUE), 0.05, na.rm = TRUE)
  age <- function(days) ifelse(is.na(days) | !has_ages, 0, (log(days) - mean(logs, na.rm = TRUE)) / spread)
  varieties <- sort(unique(data$variety))
  seasons <- sort(unique(data$season))
  own <- function(days, signs, variety) c(1, age(days), is.na(days) + 0, score(signs, usual), (varieties == variety) + 0)
  X <- t(sapply(seq_len(nrow(data)), function(i) {
    c(own(data$days[i], shown[i, ], data$variety[i]), (seasons == data$season[i]) + 0)
  }))
  sds <- SPREADS[c("constant", "age", "unknown", "signs", rep("variety", length(varieties)), rep("season", length(seasons)))]
  log_density <- function(beta) {
    eta <- X %*% beta
    colSums(data$answer * plogis(eta, log.p = TRUE) + (!data$answer) * plogis(-eta, log.p = TRUE)) - colSums((beta / sds)^2) / 2
  }
  found <- optim(rep(0, ncol(X)), function(beta) -log_density(matrix(beta)), method = "BFGS", control = list(reltol = 1e-14, maxit = 2000))
  p <- as.vector(plogis(X %*% found$par))
  root <- t(chol(1.2 * solve(crossprod(X, X * (p * (1 - p))) + diag(1 / sds^2))))
  set.seed(5)
  df <- 6
  z <- matrix(rnorm(ncol(X) * DRAWS), ncol(X))
  chi <- rchisq(DRAWS, df) / df
  beta <- found$par + root %*% (z / rep(sqrt(chi), each = ncol(X)))
  weight <- unlist(lapply(split(seq_len(DRAWS), ceiling(seq_len(DRAWS) / 20000)), function(part) log_density(beta[, part, drop = FALSE])))
  weight <- weight + (df + ncol(X)) / 2 * log1p(colSums(z^2) / chi / df)
  weight <- exp(weight - max(weight))
  weight <- weight / sum(weight)
  list(
    name = unbox(name), level = unbox(level), effective_draws = unbox(round(1 / sum(weight^2))),
    cut = lapply(seq_len(nrow(data)), function(i) {
      list(
        season = unbox(data$season[i]), variety = unbox(data$variety[i]), days_since_set = unbox(data$days[i]),
        signs = ifelse(is.na(shown[i, ]), NA, shown[i, ] == 1), answer = unbox(data$answer[i])
      )
    }),
    asked = lapply(asked, function(one) {
      eta <- as.vector(c(own(one$days, one$signs, one$variety), rep(0, length(seasons))) %*% beta)
      eta <- eta + rnorm(DRAWS, 0, SPREADS["season"])
      if (!one$variety %in% varieties) eta <- eta + rnorm(DRAWS, 0, SPREADS["variety"])
      if (is.na(one$days) && has_ages) eta <- eta + beta[2, ] * rnorm(DRAWS)
      chance <- plogis(eta)
      order <- order(chance)
      at <- function(q) chance[order][which(cumsum(weight[order]) >= q)[1]]
      list(
        variety = unbox(one$variety), days_since_set = unbox(one$days), signs = ifelse(is.na(one$signs), NA, one$signs == 1),
        chance = unbox(sum(weight * chance)), low = unbox(at((1 - level) / 2)), high = unbox(at((1 + level) / 2))
      )
    })
  )
}
ask <- function(days, signs, variety) list(days = days, signs = signs, variety = variety)
four <- list(
  ask(44, c(1, 1, 1, 1), "variety 1"), ask(38, c(1, 0, 1, 0), "variety 2"), ask(33, c(0, 0, 0, 0), "variety 1"),
  ask(40, c(1, NA, NA, NA), "variety 3"), ask(NA, c(1, 1, 1, 0), "variety 2"), ask(41, c(1, 1, 0, 1), "variety new"),
  ask(NA, c(NA, NA, NA, NA), "variety new")
)
cases <- list(
  case("three seasons", garden(1, 20, 3, 3, 4, 0, 0), four),
  case("not all looked for or dated", garden(2, 12, 2, 3, 4, 0.3, 0.3), four),
  case("eight fruits of a season", garden(3, 8, 1, 3, 4, 0, 0), four),
  case("no day known", garden(4, 15, 2, 3, 4, 0.1, 1), four),
  case("none ripe", garden(5, 6, 2, 3, 4, 0, 0, only = FALSE), four)
)
write_json(list(made_with = list(R = unbox(R.version.string)), cases = cases), "oracle.json", digits = NA, na = "null")
for (one in cases) cat(one$name, one$effective_draws, sapply(one$asked, function(x) round(x$chance, 4)), "\n")
