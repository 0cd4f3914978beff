# Fits a crossed garden by lme4 three times by the clock and prints a `Fitted`, one number a line: the least
# seconds by the clock and of the processor, the components in the order of the file's columns, the residual variance,
# the REML criterion.
# The file: y, then a column for each factor, then those whose names begin with "fixed" (the constant left out).
# Run: Rscript mixed-fits.R <garden.csv>
suppressMessages(library(lme4))
data <- read.csv(commandArgs(TRUE)[1], stringsAsFactors = TRUE)
fixed <- grep("^fixed", names(data), value = TRUE)
factors <- setdiff(names(data), c("y", fixed))
formula <- as.formula(paste("y ~", paste(c("1", fixed, paste0("(1 | ", factors, ")")), collapse = " + ")))
fit_once <- function() lmer(formula, data, control = lmerControl(calc.derivs = FALSE))
model <- fit_once()
times <- sapply(1:3, function(i) {
  took <- system.time(fit_once())
  c(took[["elapsed"]], took[["user.self"]] + took[["sys.self"]])
})
spread <- as.data.frame(VarCorr(model))
found <- c(apply(times, 1, min), spread$vcov[match(factors, spread$grp)], sigma(model)^2, REMLcrit(model))
cat(format(found, digits = 15, trim = TRUE), sep = "\n")
