# Writes oracle.json: least squares fits of small invented trials by R, for tests/statistics/oracle.test.ts, and
# quantiles and tails for tests/statistics/distributions.test.ts. The tests read the file and need no R.
# Run in this folder: Rscript make.R    (Debian: r-base-core, r-cran-emmeans, r-cran-jsonlite)
library(emmeans)
library(jsonlite)

trial <- function(treatment, block, value) {
  data.frame(treatment = treatment, block = if (is.null(block)) NA_character_ else block, value = value)
}

trials <- list(
  # Complete blocks with one plot lost.
  `one-plot-lost` = trial(
    rep(c("A", "B", "C", "D"), 3)[-7],
    rep(c("east", "middle", "west"), each = 4)[-7],
    c(6.2, 7.9, 5.1, 8.4, 5.5, 7.0, 7.7, 5.0, 6.1, 3.9, 6.6)
  ),
  # Blocks of two to four among five treatments, no two alike.
  `ragged-blocks` = trial(
    c("A", "B", "C", "B", "D", "A", "D", "E", "C", "E", "B", "A", "C"),
    c("1", "1", "1", "2", "2", "3", "3", "3", "3", "4", "4", "4", "4"),
    c(11.31, 9.07, 10.4, 8.88, 12.6, 9.95, 11.02, 7.41, 8.73, 9.16, 10.9, 12.35, 11.1)
  ),
  # A known treatment in every block, four others once or twice.
  `yardstick-everywhere` = trial(
    c("Y", "P", "Q", "Y", "R", "S", "Y", "P", "R", "Y", "S", "Q"),
    c("a", "a", "a", "b", "b", "b", "c", "c", "c", "d", "d", "d"),
    c(4.1, 5.25, 3.6, 3.3, 2.9, 4.8, 4.95, 6.4, 4.05, 3.75, 5.6, 2.85)
  ),
  # Repeats of a treatment inside a block, and a block that holds one treatment alone.
  `repeats-and-a-lone-block` = trial(
    c("A", "A", "B", "B", "C", "A", "C", "C", "B", "B"),
    c("n", "n", "n", "s", "s", "s", "s", "s", "t", "t"),
    c(2.5, 2.75, 3.5, 4.1, 1.9, 3.05, 2.2, 2.45, 3.0, 3.3)
  ),
  # A chain: neighbours share a block, the ends never meet.
  `chain` = trial(
    c("A", "B", "A", "B", "B", "C", "C", "D", "C", "D"),
    c("1", "1", "2", "2", "3", "3", "4", "4", "5", "5"),
    c(20.4, 18.1, 25.2, 21.9, 17.7, 19.6, 22.8, 20.1, 24.4, 21.2)
  ),
  # Every treatment twice in every block.
  `complete-twice` = trial(
    rep(c("A", "A", "B", "B", "C", "C"), 2),
    rep(c("1", "2"), each = 6),
    c(3.2, 3.9, 4.4, 4.1, 2.2, 2.8, 3.7, 4.6, 5.5, 4.9, 3.1, 2.6)
  ),
  # No blocks, unequal numbers, one treatment seen once.
  `one-way-unequal` = trial(
    c("A", "A", "A", "B", "B", "C", "D", "D", "D", "D"),
    NULL,
    c(7.25, 6.9, 8.3, 5.05, 6.15, 9.4, 7.7, 6.85, 8.05, 7.1)
  ),
  # No blocks, small differences on a large constant.
  `one-way-large-constant` = trial(
    c("A", "A", "A", "B", "B", "B", "B"),
    NULL,
    20000 + c(0.25, 0.5, 0.125, 0.75, 0.5, 1, 0.875)
  )
)

fitted <- function(data) {
  blocks <- !anyNA(data$block)
  factors <- data.frame(treatment = factor(data$treatment), block = factor(data$block), value = data$value)
  model <- if (blocks) lm(value ~ treatment + block, factors) else lm(value ~ treatment, factors)
  means <- as.data.frame(summary(emmeans(model, ~treatment), level = 0.9, infer = TRUE))
  pairs <- as.data.frame(summary(
    contrast(emmeans(model, ~treatment), "pairwise", adjust = "none"),
    level = 0.9, infer = TRUE
  ))
  levels <- levels(factors$treatment)
  which <- combn(levels, 2)
  # Type II: what a term adds when it enters after the other.
  adds <- function(term) {
    without <- anova(update(model, paste(". ~ . -", term)), model)[2, ]
    data.frame(term = term, df = without$Df, ss = without$`Sum of Sq`, f = without$F, p = without$`Pr(>F)`)
  }
  list(
    observations = data,
    residual_sd = unbox(sigma(model)),
    df = unbox(df.residual(model)),
    means = data.frame(
      treatment = as.character(means$treatment), n = as.vector(table(factors$treatment)),
      estimate = means$emmean, se = means$SE, low = means$lower.CL, high = means$upper.CL
    ),
    differences = data.frame(
      a = which[1, ], b = which[2, ],
      estimate = pairs$estimate, se = pairs$SE, low = pairs$lower.CL, high = pairs$upper.CL, p = pairs$p.value
    ),
    type_2 = do.call(rbind, lapply(attr(terms(model), "term.labels"), adds)),
    residual_ss = unbox(deviance(model))
  )
}

# Quantiles and tails over more ground than printed tables cover.
spots <- expand.grid(p = c(0.001, 0.05, 0.4, 0.6, 0.95, 0.9995), df = c(1, 2, 3, 5, 8, 12, 30, 200, 1000))
spots$t <- qt(spots$p, spots$df)
tails <- expand.grid(f = c(0.01, 0.7, 4.85, 60), df1 = c(1, 2, 5, 20), df2 = c(1, 4, 27, 104))
tails$upper <- pf(tails$f, tails$df1, tails$df2, lower.tail = FALSE)
counts <- data.frame(
  k = c(0, 0, 2, 9, 15, 60, 500),
  n = c(3, 60, 6, 12, 20, 400, 1000),
  p = c(0.2, 0.5, 0.9, 0.5, 0.9, 0.2, 0.5)
)
counts$at_most <- pbinom(counts$k, counts$n, counts$p)

oracle <- list(
  made_with = list(
    R = unbox(R.version.string),
    emmeans = unbox(as.character(packageVersion("emmeans"))),
    jsonlite = unbox(as.character(packageVersion("jsonlite")))
  ),
  level = unbox(0.9),
  trials = lapply(trials, fitted),
  t_quantiles = spots,
  f_tails = tails,
  binomial = counts
)
write_json(oracle, "oracle.json", digits = NA, na = "null", pretty = TRUE)
