# Writes oracle.json for tests/statistics/preference/. The tests read the file and need no R.
# Run in this folder: Rscript make.R    (Debian: r-base-core, r-cran-survival, r-cran-numderiv, r-cran-jsonlite)
# The sampler takes some three minutes; KEPT=1000 in the environment makes it short and coarse.
#
#   unpulled  maximum likelihood: pairs by binomial glm, pairs with ties as a loglinear model by Poisson glm, orders of
#             a few by Cox regression with a stratum an order (the partial likelihood of ranks is Plackett-Luce's)
#   pulled    worths of varieties and fruits at known spreads: the posterior's peak by nlminb and the inverse of its
#             curvature by Richardson's differences, from a likelihood written from the definition
#   sampled   the same model with both spreads unknown: a long run of elliptical slice sampling (Murray, Adams &
#             MacKay 2010) and slice sampling of the spreads (Neal 2003), no approximation but the length of the run
suppressMessages({
  library(survival)
  library(numDeriv)
  library(jsonlite)
})
RNGkind("Mersenne-Twister", "Inversion", "Rejection")

# Reads the rows of numbers and quoted names between brackets in a data file beside this script.
rows_of <- function(file) {
  lines <- grep("^    \\['", readLines(file), value = TRUE)
  lines <- grep(":", lines, value = TRUE, invert = TRUE)
  do.call(rbind, lapply(lines, function(line) {
    cells <- strsplit(gsub("^ *\\[|\\],?$", "", line), ", ")[[1]]
    as.data.frame(as.list(gsub("'", "", cells)), col.names = paste0("c", seq_along(cells)))
  }))
}

bradley_terry <- function(one, other, won, lost, reference) {
  things <- setdiff(sort(unique(c(one, other))), reference)
  x <- sapply(things, function(thing) (one == thing) - (other == thing))
  fit <- summary(glm(cbind(won, lost) ~ x - 1, family = binomial, control = list(epsilon = 1e-14, maxit = 50)))
  setNames(lapply(seq_along(things), function(k) unname(fit$coefficients[k, 1:2])), things)
}

davidson <- function(one, other, counts, reference) {
  things <- setdiff(sort(unique(c(one, other))), reference)
  one_x <- sapply(things, function(thing) as.numeric(one == thing))
  other_x <- sapply(things, function(thing) as.numeric(other == thing))
  x <- rbind(one_x, other_x, (one_x + other_x) / 2)
  tie <- rep(c(0, 0, 1), each = length(one))
  pair <- factor(rep(seq_along(one), 3))
  fit <- summary(glm(c(as.matrix(counts)) ~ pair + x + tie, family = poisson, control = list(epsilon = 1e-14, maxit = 50)))
  own <- tail(fit$coefficients, length(things) + 1)[, 1:2]
  setNames(lapply(seq_len(nrow(own)), function(k) unname(own[k, ])), c(things, "log_ties"))
}

plackett_luce <- function(orders, reference) {
  long <- do.call(rbind, lapply(seq_along(orders), function(k) {
    data.frame(ballot = k, item = orders[[k]], place = seq_along(orders[[k]]))
  }))
  long$item <- relevel(factor(long$item), reference)
  fit <- summary(coxph(Surv(place, rep(1, nrow(long))) ~ item + strata(ballot), long,
    control = coxph.control(eps = 1e-12, toler.chol = 1e-13, iter.max = 100)
  ))
  own <- fit$coefficients[, c("coef", "se(coef)")]
  setNames(lapply(seq_len(nrow(own)), function(k) unname(own[k, ])), levels(long$item)[-1])
}

# An invented tasting. Fruits are a1, a2 … of variety a; pairs and orders are drawn from the model itself.
tasting <- function(seed, varieties, fruits_each, pairs, orders, variety_sd, fruit_sd, ties) {
  set.seed(seed)
  fruits <- unlist(lapply(letters[seq_len(varieties)], paste0, seq_len(fruits_each)))
  variety <- substr(fruits, 1, 1)
  worth <- setNames(rnorm(varieties, 0, variety_sd), unique(variety))[variety] + rnorm(length(fruits), 0, fruit_sd)
  names(worth) <- fruits
  list(
    fruits = as.list(setNames(variety, fruits)),
    pairs = lapply(seq_len(pairs), function(k) {
      two <- sample(fruits, 2)
      odds <- c(exp(worth[two[1]]), ties * exp(sum(worth[two]) / 2), exp(worth[two[2]]))
      list(first = two[1], second = two[2], said = sample(c("first", "same", "second"), 1, prob = odds))
    }),
    orders = lapply(seq_len(orders), function(k) {
      few <- sample(fruits, 3)
      # The largest of worths plus Gumbel noise is Luce's choice.
      list(best_first = few[order(worth[few] - log(-log(runif(3))), decreasing = TRUE)])
    })
  )
}

log_likelihood <- function(set, worth, log_ties) {
  sum(vapply(set$pairs, function(pair) {
    odds <- c(first = worth[[pair$first]], second = worth[[pair$second]])
    odds <- c(odds, same = log_ties + mean(odds))
    odds[[pair$said]] - log(sum(exp(odds)))
  }, 0)) + sum(vapply(set$orders, function(order) {
    own <- worth[order$best_first]
    sum(own) - sum(log(rev(cumsum(rev(exp(own))))))
  }, 0))
}

# A faster copy for the sampler, by place.
compiled <- function(set) {
  fruits <- names(set$fruits)
  a <- match(sapply(set$pairs, `[[`, "first"), fruits)
  b <- match(sapply(set$pairs, `[[`, "second"), fruits)
  said <- sapply(set$pairs, `[[`, "said")
  w <- (said == "first") - (said == "second")
  tie <- said == "same"
  o <- if (length(set$orders)) t(sapply(set$orders, function(one) match(one$best_first, fruits))) else NULL
  function(worth, log_ties) {
    half <- (worth[a] - worth[b]) / 2
    log <- sum(w * half) + sum(tie) * log_ties - sum(log(exp(half) + exp(-half) + exp(log_ties)))
    if (is.null(o)) return(log)
    e <- matrix(exp(worth[o]), nrow(o))
    log + sum(log(e[, 1]) + log(e[, 2]) - log(rowSums(e)) - log(e[, 2] + e[, 3]))
  }
}

summaries <- function(draws, set) {
  varieties <- unique(unlist(set$fruits))
  centred <- draws - rowMeans(draws)
  difference <- draws[, 1] - draws[, 2]
  list(
    worths = setNames(lapply(seq_along(varieties), function(k) {
      c(mean(centred[, k]), quantile(centred[, k], c(0.05, 0.95), names = FALSE))
    }), varieties),
    first_less_second = c(
      mean(difference), quantile(difference, c(0.05, 0.95), names = FALSE), mean(difference > 0)
    )
  )
}

pulled <- function(set, variety_sd, fruit_sd, ties_sd) {
  fruits <- names(set$fruits)
  varieties <- unique(unlist(set$fruits))
  n <- length(varieties)
  penalised <- function(u) {
    worth <- setNames(u[match(unlist(set$fruits), varieties)] + u[n + seq_along(fruits)], fruits)
    log_ties <- u[n + length(fruits) + 1]
    -log_likelihood(set, worth, log_ties) + sum(u[seq_len(n)]^2) / 2 / variety_sd^2 +
      sum(u[n + seq_along(fruits)]^2) / 2 / fruit_sd^2 + log_ties^2 / 2 / ties_sd^2
  }
  at <- nlminb(rep(0, n + length(fruits) + 1), penalised, control = list(rel.tol = 1e-15, iter.max = 1000))$par
  for (step in 1:3) at <- at - solve(hessian(penalised, at), grad(penalised, at))
  covariance <- solve(hessian(penalised, at))[seq_len(n), seq_len(n)]
  centring <- diag(n) - 1 / n
  list(
    tasting = set, spreads = list(variety = variety_sd, fruit = fruit_sd, ties = ties_sd),
    worths = setNames(lapply(seq_len(n), function(k) {
      c((centring %*% at[seq_len(n)])[k], sqrt((centring %*% covariance %*% centring)[k, k]))
    }), varieties)
  )
}

sampled <- function(set, scale_variety, scale_fruit, ties_sd, seed, kept = 50000, every = 3) {
  set.seed(seed)
  like <- compiled(set)
  variety <- match(unlist(set$fruits), unique(unlist(set$fruits)))
  n <- max(variety)
  m <- length(variety)
  # Latents in units of their spreads; spreads as absolute values of normals.
  value <- function(z, s) like(s[1] * z[variety] + s[2] * z[n + seq_len(m)], ties_sd * z[n + m + 1])
  z <- rnorm(n + m + 1)
  s <- c(scale_variety, scale_fruit)
  scales <- s
  draws <- matrix(NA, kept, n)
  for (k in seq_len(kept * every + 1000)) {
    nu <- rnorm(n + m + 1)
    level <- value(z, s) + log(runif(1))
    angle <- runif(1, 0, 2 * pi)
    low <- angle - 2 * pi
    high <- angle
    repeat {
      next_z <- z * cos(angle) + nu * sin(angle)
      if (value(next_z, s) > level) break
      if (angle < 0) low <- angle else high <- angle
      angle <- runif(1, low, high)
    }
    z <- next_z
    for (which in 1:2) {
      density <- function(one) {
        if (one <= 0) return(-Inf)
        value(z, replace(s, which, one)) - one^2 / 2 / scales[which]^2
      }
      level <- density(s[which]) + log(runif(1))
      low <- 0
      high <- 6 * scales[which]
      repeat {
        one <- runif(1, low, high)
        if (density(one) > level) break
        if (one < s[which]) low <- one else high <- one
      }
      s[which] <- one
    }
    if (k > 1000 && (k - 1000) %% every == 0) draws[(k - 1000) / every, ] <- s[1] * z[seq_len(n)]
  }
  c(list(
    tasting = set,
    scales = list(variety = scale_variety, fruit = scale_fruit, ties = ties_sd)
  ), summaries(draws, set), list(run_error = run_error(draws, set)))
}

# The largest standard error of any number above, from ten stretches of the run.
run_error <- function(draws, set) {
  stretch <- rep(1:10, each = nrow(draws) / 10)
  each <- sapply(1:10, function(k) unlist(summaries(draws[stretch == k, ], set)))
  max(apply(each, 1, sd)) / sqrt(10)
}

baseball <- rows_of("baseball.ts")
citations <- rows_of("citations.ts")
puddings <- rows_of("puddings.ts")
count <- function(column) as.numeric(column)
orders <- list(
  c("a", "b", "c"), c("b", "a", "d"), c("c", "a", "b"), c("d", "c"), c("a", "d", "e"), c("e", "b"), c("a", "c", "e", "d"),
  c("b", "d", "c"), c("c", "e", "a"), c("d", "a"), c("b", "e", "d", "a"), c("a", "b"), c("e", "c", "b"), c("d", "e")
)

few <- tasting(1, 3, 2, 10, 0, 0.8, 0.8, 0.7)
evening <- tasting(2, 4, 3, 24, 0, 0.8, 1, 0.7)
season <- tasting(3, 5, 4, 30, 15, 1, 1, 0.5)
orders_only <- tasting(4, 4, 2, 0, 12, 1, 0.7, 0.5)
# One variety that wins every pair: without a pull its worth would have no end.
unbeaten <- list(
  fruits = list(a1 = "a", b1 = "b", c1 = "c"),
  pairs = list(
    list(first = "a1", second = "b1", said = "first"), list(first = "a1", second = "c1", said = "first"),
    list(first = "a1", second = "b1", said = "first"), list(first = "b1", second = "c1", said = "same"),
    list(first = "c1", second = "b1", said = "first"), list(first = "c1", second = "a1", said = "second")
  ),
  orders = list()
)
run <- as.numeric(Sys.getenv("KEPT", 50000))
sets <- list(few = few, evening = evening, season = season, `orders-only` = orders_only, unbeaten = unbeaten)

write_json(
  list(
    made_with = list(R = R.version.string, survival = as.character(packageVersion("survival"))),
    unpulled = list(
      baseball = bradley_terry(baseball$c1, baseball$c2, count(baseball$c3), count(baseball$c4), "Baltimore"),
      citations = with(citations, bradley_terry(c1, c2, count(c3), 0 * count(c3), "Biometrika")),
      puddings = davidson(puddings$c1, puddings$c2, sapply(puddings[3:5], count), "1"),
      orders = list(given = orders, worths = plackett_luce(orders, "a"))
    ),
    pulled = lapply(sets, pulled, 0.9, 0.7, 1),
    sampled = lapply(sets, sampled, 1, 1, 1, seed = 9, kept = run)
  ),
  "oracle.json", digits = NA, auto_unbox = TRUE
)
