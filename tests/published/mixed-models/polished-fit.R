# A mixed model by lme4 with its optimum polished, for make.R and gardens.R. Needs lme4 and numDeriv.
#
# lme4's search stops some seven digits short in theta, because its deviance is flat around its minimum. So: a tight
# search, then Newton steps on the same deviance for every theta off the boundary, by Richardson's differences.
fit <- function(formula, data) {
  parsed <- lFormula(formula, data, REML = TRUE, control = lmerControl(
    check.conv.singular = "ignore", check.nlev.gtr.1 = "ignore"
  ))
  deviance <- do.call(mkLmerDevfun, parsed)
  starts <- c(0.1, 1, 3)
  tries <- lapply(starts, function(start) {
    nloptr::bobyqa(rep(start, length(parsed$reTrms$theta)), deviance,
      lower = parsed$reTrms$lower,
      control = list(xtol_rel = 1e-12, ftol_rel = 1e-16, maxeval = 1e4)
    )
  })
  theta <- tries[[which.min(sapply(tries, `[[`, "value"))]]$par
  theta[theta < 1e-4] <- 0
  inside <- theta > 0
  if (any(inside)) {
    on_inside <- function(part) deviance(replace(theta, inside, part))
    # Wide differences, a twentieth of theta and halved from there: narrow ones drown in rounding.
    wide <- list(d = 0.05, r = 6)
    slope <- function() grad(on_inside, theta[inside], method.args = wide)
    curve <- function() hessian(on_inside, theta[inside], method.args = wide)
    for (step in 1:6) theta[inside] <- theta[inside] - solve(curve(), slope())
    left <- abs(solve(curve(), slope())) / theta[inside]
    stopifnot(all(left < 1e-6), all(eigen(curve())$values > 0))
  }
  best <- deviance(theta)
  # At the boundary the deviance must rise; and no start may have found less.
  for (k in which(!inside)) stopifnot(deviance(replace(theta, k, 0.01)) > best)
  stopifnot(best <= min(sapply(tries, `[[`, "value")) + 1e-9)
  deviance(theta)
  model <- mkMerMod(environment(deviance), list(par = theta, fval = best, conv = 0, message = NULL),
    parsed$reTrms, parsed$fr
  )
  stopifnot(identical(unname(getME(model, "theta")), theta))
  model
}
