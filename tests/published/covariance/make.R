# Writes oracle.json: analysis of covariance by lm, car, emmeans, for tests/statistics/covariance-analysis.test.ts.
# The test reads the file and needs no R. Trials are invented.
# Run in this folder: Rscript make.R    (Debian: r-base-core, r-cran-car, r-cran-emmeans, r-cran-jsonlite)
suppressMessages({
  library(car)
  library(emmeans)
  library(jsonlite)
})
set.seed(422)
RNGkind("Mersenne-Twister", "Inversion", "Rejection")
trial <- function(sizes, slopes, offset = 0) {
  group <- factor(rep(LETTERS[seq_along(sizes)], sizes))
  covariate <- round(runif(length(group), 2, 9) + as.integer(group), 1)
  value <- offset + round(4 + as.integer(group) + slopes[as.integer(group)] * covariate + rnorm(length(group)), 2)
  data.frame(group, covariate, value)
}
case <- function(data) {
  model <- lm(value ~ group + covariate, data)
  own <- lm(value ~ group * covariate, data)
  table <- Anova(model, type = 2)
  slopes <- anova(model, own)
  means <- emmeans(model, "group", at = list(covariate = mean(data$covariate)))
  estimates <- as.data.frame(means)
  pairs <- as.data.frame(pairs(means, adjust = "none"))
  list(
    observations = transform(data, group = as.character(group)),
    df = unbox(df.residual(model)), residual_sd = unbox(sigma(model)), covariate_mean = unbox(mean(data$covariate)),
    slope = list(estimate = unbox(unname(coef(model)["covariate"])), se = unbox(sqrt(vcov(model)["covariate", "covariate"]))),
    means = lapply(seq_len(nrow(estimates)), function(at) {
      list(group = unbox(as.character(estimates$group[at])), estimate = unbox(estimates$emmean[at]), se = unbox(estimates$SE[at]))
    }),
    differences = lapply(seq_len(nrow(pairs)), function(at) {
      names <- strsplit(as.character(pairs$contrast[at]), " - ")[[1]]
      list(a = unbox(names[1]), b = unbox(names[2]), estimate = unbox(pairs$estimate[at]), se = unbox(pairs$SE[at]))
    }),
    rows = lapply(c("group", "covariate"), function(term) {
      list(term = unbox(term), df = unbox(table[term, "Df"]), ss = unbox(table[term, "Sum Sq"]), f = unbox(table[term, "F value"]), p = unbox(table[term, "Pr(>F)"]))
    }),
    equal_slopes = list(f = unbox(slopes$F[2]), p = unbox(slopes$`Pr(>F)`[2]), df = unbox(slopes$Df[2]), df_residual = unbox(slopes$Res.Df[2]))
  )
}
write_json(list(
  made_with = list(R = unbox(R.version.string), car = unbox(as.character(packageVersion("car"))), emmeans = unbox(as.character(packageVersion("emmeans")))),
  trials = list(
    unequal = case(trial(c(5, 3, 8, 2), c(0.5, 0.5, 0.5, 0.5))),
    slopes_differ = case(trial(c(6, 7), c(0.2, 1.5))),
    shared_digits = case(trial(c(4, 5, 4), c(-0.7, -0.7, -0.7), offset = 1e5))
  )
), "oracle.json", digits = NA, pretty = TRUE)
