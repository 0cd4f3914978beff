# Writes oracle.json: differences from a yardstick over shared seasons by lm's contrasts of cell means, by emmeans and by
# the additive model, for tests/statistics/shared-differences.test.ts. The test reads the file and needs no R.
# Run in this folder: Rscript make.R    (Debian: r-base-core, r-cran-emmeans, r-cran-jsonlite). Trials are invented.
suppressMessages({
  library(emmeans)
  library(jsonlite)
})
set.seed(20260719)
RNGkind("Mersenne-Twister", "Inversion", "Rejection")

# A string of cells such as "A1 A1 A2 B1": variety and season, one mound each.
trial <- function(plots) {
  cells <- strsplit(plots, " ")[[1]]
  variety <- substr(cells, 1, 1)
  season <- substr(cells, 2, 2)
  value <- 6 + c(A = 0, B = 1.4, C = -0.8, D = 0.5)[variety] + c(`1` = 0, `2` = 2, `3` = -1.5)[season] + rnorm(length(cells))
  data.frame(season, variety, mound = as.character(ave(seq_along(cells), cells, FUN = seq_along)), value = round(unname(value), 1))
}
plots <- list(
  one_season = "A1 A1 A1 B1 B1 C1 C1 C1 C1",
  balanced = "A1 A1 A2 A2 A3 A3 B1 B1 B2 B2 B3 B3 C1 C1 C2 C2 C3 C3",
  no_gaps = "A1 A1 A1 A2 A2 A3 B1 B1 B2 B3 B3 B3 B3 C1 C2 C2 C3 C3",
  gaps = "A1 A1 A1 A2 A2 B1 B1 B2 B2 B2 B3 C1 C1 C3 C3 C3 D3 D3",
  single_mounds = "A1 A2 A3 B1 B2 B3 C1 C2 C2 C3"
)


# Contrast of cell means in the model with an effect for every variety in every season.
contrast <- function(data, variety) {
  seasons <- sort(intersect(data$season[data$variety == "A"], data$season[data$variety == variety]))
  if (length(seasons) == 0) return(NULL)
  data$cell <- factor(paste0(data$variety, data$season))
  model <- lm(value ~ 0 + cell, data)
  l <- setNames(numeric(nlevels(data$cell)), levels(data$cell))
  l[paste0(variety, seasons)] <- 1 / length(seasons)
  l[paste0("A", seasons)] <- -1 / length(seasons)
  df <- df.residual(model)
  list(
    seasons = seasons, difference = sum(l * coef(model)),
    sed = if (df > 0) sqrt(sum(l * (vcov(model) %*% l))) else NA_real_, df = if (df > 0) df else NA_real_
  )
}

described <- function(data, variety) {
  found <- contrast(data, variety)
  if (is.null(found)) return(NULL)
  in_two <- which(data$season %in% found$seasons & data$variety %in% c("A", variety))
  lines <- function(drops) {
    kept <- Filter(Negate(is.null), lapply(drops, function(drop) contrast(data[-drop, ], variety)))
    if (length(kept) == 0) return(NULL)
    differences <- sapply(kept, `[[`, "difference")
    line <- function(at) lapply(kept[[at]][c("difference", "sed", "df")], unbox)
    list(smallest = line(which.min(differences)), largest = line(which.max(differences)), ends_it = unbox(length(drops) - length(kept)))
  }
  each <- sapply(found$seasons, function(season) {
    mean(data$value[data$season == season & data$variety == variety]) - mean(data$value[data$season == season & data$variety == "A"])
  })
  over <- if (length(each) > 1) t.test(each) else NULL
  list(
    variety = unbox(variety), seasons = found$seasons, difference = unbox(found$difference),
    sed = unbox(found$sed),
    over_seasons = if (is.null(over)) NULL else list(se = unbox(over$stderr), df = unbox(unname(over$parameter))),
    without_mound = lines(as.list(in_two)),
    without_season = lines(lapply(found$seasons, function(season) which(data$season == season)))
  )
}

# Against A by emmeans, from a model.
by_emmeans <- function(model) {
  against <- as.data.frame(suppressMessages(contrast_against(model)))
  lapply(seq_len(nrow(against)), function(row) {
    list(
      variety = unbox(sub(" - A", "", as.character(against$contrast[row]))), difference = unbox(against$estimate[row]),
      se = unbox(against$SE[row]), df = unbox(against$df[row])
    )
  })
}
contrast_against <- function(model) emmeans::contrast(emmeans(model, "variety"), "trt.vs.ctrl1", adjust = "none")

case <- function(name) {
  data <- trial(plots[[name]])
  cells <- lm(value ~ 0 + factor(paste0(variety, season)), data)
  several <- length(unique(data$season)) > 1
  varieties <- setdiff(sort(unique(data$variety)), "A")
  full <- all(table(data$variety, data$season) > 0)
  list(
    rows = data,
    spread = list(sd = unbox(summary(cells)$sigma), df = unbox(df.residual(cells)), cv_of_100 = unbox(100 * summary(cells)$sigma / mean(data$value))),
    varieties = Filter(Negate(is.null), lapply(varieties, function(variety) described(data, variety))),
    # With no gaps: each season weighing the same.
    emmeans_interaction = if (full && several) by_emmeans(lm(value ~ variety * season, data)),
    emmeans_additive = by_emmeans(if (several) lm(value ~ variety + season, data) else lm(value ~ variety, data))
  )
}
write_json(list(
  made_with = list(R = unbox(R.version.string), emmeans = unbox(as.character(packageVersion("emmeans")))),
  trials = sapply(names(plots), case, simplify = FALSE)
), "oracle.json", digits = NA, na = "null", null = "null", pretty = TRUE)
