# Writes oracle.json: two-way tables of types I, II and III by R's anova, car and drop1, and Tukey's intervals, for
# tests/statistics/two-way-sums.test.ts and tukey-kramer.test.ts. The tests read the file and need no R.
# Run at the root of the project, after npm ci: Rscript tests/published/two-way/make.R
# (Debian: r-base-core, r-cran-car, r-cran-emmeans, r-cran-jsonlite)
# The barley yields (Immer, Hayes & Powers 1934, as printed by Fisher 1935) stay in vega-datasets 3.2.1, data/barley.json,
# from which the test takes them too; the trials with letters are invented.
suppressMessages({
  library(car)
  library(emmeans)
  library(jsonlite)
})
options(contrasts = c("contr.sum", "contr.poly"))

row <- function(term, ss, df, f = NA_real_, p = NA_real_) list(term = unbox(term), df = unbox(df), ss = unbox(ss), f = unbox(f), p = unbox(p))
tidy <- function(table) {
  names <- c(treatment = "treatment", block = "block", `treatment:block` = "interaction", Residuals = "residual")
  table <- table[rownames(table) %in% names(names), ]
  p <- grep("Pr", colnames(table))
  f <- grep("^F", colnames(table))
  df <- grep("Df", colnames(table))
  ss <- grep("Sum", colnames(table))
  lapply(rownames(table), function(one) row(names[[one]], table[one, ss], table[one, df], table[one, f], table[one, p]))
}
types <- function(data) {
  model <- lm(value ~ treatment * block, data)
  full <- all(table(data$treatment, data$block) > 0)
  list(
    I = tidy(anova(model)),
    # Type II by hand: with empty cells each main effect still enters after the other.
    II = local({
      one <- anova(lm(value ~ block + treatment, data), model)
      first <- anova(lm(value ~ block * treatment, data))
      rownames(first)[rownames(first) == "block:treatment"] <- "treatment:block"
      second <- anova(model)
      table <- rbind(first["treatment", ], second[c("block", "treatment:block", "Residuals"), ])
      if (full) stopifnot(all.equal(table[["Sum Sq"]], Anova(model, type = 2)[["Sum Sq"]]))
      tidy(table)
    }),
    III = if (full) tidy(Anova(model, type = 3))
  )
}
# Tukey-Kramer by emmeans from the model treatment + block (or treatment), every pair.
pairs_of <- function(data, level) {
  model <- if (all(is.na(data$block))) lm(value ~ treatment, data) else lm(value ~ treatment + block, data)
  table <- as.data.frame(summary(pairs(emmeans(model, "treatment")), infer = TRUE, level = level, adjust = "tukey"))
  lapply(seq_len(nrow(table)), function(at) {
    names <- gsub("[()]", "", strsplit(as.character(table$contrast[at]), " - ")[[1]])
    list(a = unbox(names[1]), b = unbox(names[2]), difference = unbox(table$estimate[at]), low = unbox(table$lower.CL[at]),
      high = unbox(table$upper.CL[at]), p = unbox(table$p.value[at]))
  })
}
as_rows <- function(data) transform(data, treatment = as.character(treatment), block = as.character(block))

barley <- fromJSON("node_modules/vega-datasets/data/barley.json")
by <- function(block) {
  data <- data.frame(treatment = factor(barley$variety), block = factor(barley[[block]]), value = barley$yield)
  list(types = types(data), pairs = pairs_of(data, 0.9))
}
three <- anova(lm(yield ~ site + factor(year) + variety, barley))
means <- tapply(barley$yield, barley$variety, mean)
site_means <- tapply(barley$yield, barley$site, mean)

set.seed(1931)
RNGkind("Mersenne-Twister", "Inversion", "Rejection")
invented <- function(plots) {
  cells <- strsplit(plots, " ")[[1]]
  treatment <- factor(substr(cells, 1, 1))
  block <- factor(substr(cells, 2, 2))
  value <- 5 + as.integer(treatment) + 0.7 * as.integer(block) * (as.integer(treatment) - 2) + rnorm(length(cells))
  data.frame(treatment, block, value = round(value, 1))
}
plots <- c(
  unequal = "A1 A1 A1 A2 A3 A3 B1 B2 B2 B3 B3 B3 C1 C1 C2 C2 C2 C2 C3",
  empty_cells = "A1 A1 A2 A2 A2 B1 B1 B3 B3 C2 C3 C3 C3 D1 D2 D3",
  equal = "A1 A1 A2 A2 A3 A3 B1 B1 B2 B2 B3 B3"
)
trials <- lapply(plots, function(one) {
  data <- invented(one)
  list(observations = as_rows(data), types = types(data), pairs = pairs_of(data, 0.9))
})

write_json(list(
  made_with = list(R = unbox(R.version.string), car = unbox(as.character(packageVersion("car"))), emmeans = unbox(as.character(packageVersion("emmeans")))),
  level = unbox(0.9),
  barley = list(
    site = by("site"), year = by("year"), variety_means = as.list(means), site_means = as.list(site_means),
    additive = lapply(rownames(three), function(one) list(term = unbox(sub("factor\\(year\\)", "year", one)), df = unbox(three[one, "Df"]), ss = unbox(three[one, "Sum Sq"])))
  ),
  trials = trials
), "tests/published/two-way/oracle.json", digits = NA, na = "null", null = "null", auto_unbox = FALSE, pretty = TRUE)
