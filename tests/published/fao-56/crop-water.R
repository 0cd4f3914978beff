# The `exact` columns of crop-coefficients.ts and bare-soil.ts in this folder: the paper's equations without its
# rounded steps. The tests need no R. Run anywhere: Rscript crop-water.R
options(digits = 15)
moved <- function(kc, wind, rh, h) kc + (0.04 * (wind - 2) - 0.004 * (rh - 45)) * (h / 3)^0.3
curve <- function(day, L, k) approx(c(0, L[1], L[1] + L[2], sum(L[1:3]), sum(L)), k[c(1, 1, 2, 2, 3)], day)$y

cat("example 27:", moved(1.2, 1.3, 75, 2), moved(1.2, 4.6, 44, 2), "\n")
cat("example 28:", curve(c(20, 40, 70, 95), c(25, 25, 30, 20), c(0.15, 1.19, 0.35)), "\n")
cat("example 29:", moved(1.1, 2.2, 30, 0.4), "\n")
cat("example 30:", curve(c(12, 37, 65, 90), c(25, 25, 30, 20), c(0.15, 1.14, 0.25)), "\n")
italy <- c(20, 30, 30, 30)
desert <- c(10, 20, 20, 30)
kc <- c(0.4, 1, 0.75)
cat("Italy:", curve(c(1, 20, 21, 35, 50, 65, 80, 95, 110), italy, kc), "sum", sum(curve(1:110, italy, kc)), "\n")
cat("desert:", curve(c(1, 10, 20, 30, 50, 65, 80), desert, kc), "sum", sum(curve(1:80, desert, kc)), "\n")
cat("climates:", moved(1, 3, 30, 0.4), moved(1, 2, 45, 0.4), moved(1, 1, 80, 0.4), moved(1, 6, 20, 0.4), "\n")

kc_max <- moved(1.2, 3, 20, 1)
fc <- ((0.9 - 0.15) / (kc_max - 0.15))^1.5
few <- c(sprinkler = min(1 - fc, 1), furrow = min(1 - fc, 0.3), drip = min(1 - fc, (1 - 2 / 3 * fc) * 0.3))
cat("examples 32 to 34:", kc_max, fc, few, 0.9 + pmin(kc_max - 0.9, few * kc_max), "\n")

# Example 35: water early in the day; watered over 0.8 of the ground on day 1, rain on all of it on day 6.
eto <- c(4.5, 5, 3.9, 4.2, 4.8, 2.7, 5.8, 5.1, 4.7, 5.2)
kcb <- seq(0.3, 0.4, length.out = 10)
open <- seq(0.92, 0.86, length.out = 10)
top <- moved(1.2, 1.6, 35, 0.3)
fw <- c(rep(0.8, 5), rep(1, 5))
water <- c(40 / 0.8, 0, 0, 0, 0, 6, 0, 0, 0, 0)
de <- 18
etc <- numeric(10)
for (i in 1:10) {
  de <- max(de - water[i], 0)
  few <- min(open[i], fw[i])
  ke <- min(min(1, max(0, (18 - de) / (18 - 8))) * (top - kcb[i]), few * top)
  etc[i] <- (kcb[i] + ke) * eto[i]
  de <- min(de + ke * eto[i] / few, 18)
}
cat("example 35:", top, etc, "\n")
