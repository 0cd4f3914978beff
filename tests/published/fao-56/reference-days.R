# Writes reference-days.json: reference evapotranspiration of made-up days in made-up places, some with readings missing, for
# tests/agronomy/reference-day.test.ts. The equations of FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes &
# Smith 1998) are typed out anew here, over whole columns; the examples of the paper at the end hold them. The test reads the
# file and needs no R. Run in this folder: Rscript reference-days.R    (Debian: r-base-core, r-cran-jsonlite)
library(jsonlite)
set.seed(20250812)

n <- 240
lost <- function(values, share) ifelse(runif(n) < share, NA, values)
days <- data.frame(latitude_deg = round(runif(n, -62, 62), 2), elevation_m = round(runif(n, -200, 3800)),
                   day_of_year = sample(1:366, n, TRUE), wind_height_m = sample(c(2, 3, 10), n, TRUE),
                   coast = runif(n) < 0.5, dry_air = runif(n) < 0.5, tmin_c = round(runif(n, -8, 28), 1))
days$tmax_c <- round(days$tmin_c + runif(n, 0, 22), 1)
days$dew_c <- lost(round(days$tmin_c - runif(n, -3, 12), 1), 0.6)
days$rh_min_pct <- lost(round(runif(n, 5, 80)), 0.5)
days$rh_max_pct <- lost(round(runif(n, 80, 100)), 0.5)
days$wind_m_s <- lost(round(rexp(n, 1 / 2.5), 1), 0.4)
days$sun_h <- lost(round(runif(n, 0, 15), 1), 0.5)
days$solar_mj_m2 <- lost(round(runif(n, 0, 28), 1), 0.7)

e0 <- function(t) 0.6108 * exp(17.27 * t / (t + 237.3))

# Whether Eq. 6 can be used at all is for the caller; wind at 2 m, G in MJ a m2 a day.
eq6 <- function(tmax, tmin, ea, rs, rso, wind, z, g) {
  tm <- (tmax + tmin) / 2
  delta <- 4098 * e0(tm) / (tm + 237.3)^2
  gamma <- 0.665e-3 * 101.3 * ((293 - 0.0065 * z) / 293)^5.26
  f <- pmin(pmax(rs / rso, 0.3), 1)
  rnl <- 4.903e-9 * rowMeans(cbind((tmax + 273.16)^4, (tmin + 273.16)^4)) * (0.34 - 0.14 * sqrt(ea)) * (1.35 * f - 0.35)
  rn <- 0.77 * rs - rnl
  es <- rowMeans(cbind(e0(tmax), e0(tmin)))
  (0.408 * delta * (rn - g) + gamma * 900 / (tm + 273) * wind * (es - ea)) / (delta + gamma * (1 + 0.34 * wind))
}

sun <- function(latitude_deg, j) {
  phi <- latitude_deg * pi / 180
  decl <- 0.409 * sin(2 * pi * j / 365 - 1.39)
  ws <- acos(pmin(pmax(-tan(phi) * tan(decl), -1), 1))
  ra <- 24 * 60 * 0.082 / pi * (1 + 0.033 * cos(2 * pi * j / 365)) *
    (ws * sin(phi) * sin(decl) + cos(phi) * cos(decl) * sin(ws))
  list(ra = ra, hours = ws * 24 / pi)
}

reckon <- function(d) {
  s <- sun(d$latitude_deg, d$day_of_year)
  rso <- (0.75 + 2e-5 * d$elevation_m) * s$ra
  es <- (e0(d$tmax_c) + e0(d$tmin_c)) / 2
  ea <- e0(d$tmin_c - 2 * d$dry_air)
  low <- !is.na(d$rh_min_pct)
  ea[low] <- pmin(e0(d$tmax_c) * d$rh_min_pct / 100, e0(d$tmin_c))[low]
  high <- !is.na(d$rh_max_pct)
  ea[high] <- (e0(d$tmin_c) * d$rh_max_pct / 100)[high]
  both <- low & high
  ea[both] <- ((e0(d$tmin_c) * d$rh_max_pct + e0(d$tmax_c) * d$rh_min_pct) / 200)[both]
  dew <- !is.na(d$dew_c)
  ea[dew] <- e0(d$dew_c)[dew]
  ea <- pmin(ea, es)
  rs <- pmin(ifelse(d$coast, 0.19, 0.16) * sqrt(d$tmax_c - d$tmin_c) * s$ra, rso)
  hours <- !is.na(d$sun_h)
  rs[hours] <- ((0.25 + 0.5 * pmin(d$sun_h / s$hours, 1)) * s$ra)[hours]
  read <- !is.na(d$solar_mj_m2)
  rs[read] <- d$solar_mj_m2[read]
  wind <- pmax(d$wind_m_s * ifelse(d$wind_height_m == 2, 1, 4.87 / log(67.8 * d$wind_height_m - 5.42)), 0.5)
  blown <- !is.na(d$wind_m_s)
  wind[!blown] <- 2
  eto <- eq6(d$tmax_c, d$tmin_c, ea, rs, rso, wind, d$elevation_m, 0)
  bare <- !(low | high | dew | hours | read | blown)
  rough <- 0.0023 * ((d$tmax_c + d$tmin_c) / 2 + 17.8) * sqrt(d$tmax_c - d$tmin_c) * 0.408 * s$ra
  data.frame(method = ifelse(bare, "hargreaves", "penman-monteith"), eto_mm = pmax(ifelse(bare, rough, eto), 0),
             below_zero = !bare & eto < 0, damp = !(low | high | dew), sun = !(hours | read), wind = !blown)
}

# Example 18: 3.88; Example 20 with wind at 1, 2 and 3 m/s: 4.2, 4.56, 4.8.
uccle <- data.frame(latitude_deg = 50.8, elevation_m = 100, day_of_year = 187, wind_height_m = 10, coast = FALSE,
                    dry_air = FALSE, tmin_c = 12.3, tmax_c = 21.5, dew_c = NA, rh_min_pct = 63, rh_max_pct = 84,
                    wind_m_s = 10 / 3.6, sun_h = 9.25, solar_mj_m2 = NA)
lyon <- data.frame(latitude_deg = 45 + 43 / 60, elevation_m = 200, day_of_year = 196, wind_height_m = 2, coast = FALSE,
                   dry_air = FALSE, tmin_c = 14.8, tmax_c = 26.6, dew_c = NA, rh_min_pct = NA, rh_max_pct = NA,
                   wind_m_s = 1:3, sun_h = NA, solar_mj_m2 = NA)
stopifnot(round(reckon(uccle)$eto_mm, 2) == 3.88, round(reckon(lyon)$eto_mm, c(1, 2, 1)) == c(4.2, 4.56, 4.8))

# Examples 17 and 18 with the damp that was read, and with less of it. Example 17 has G 0.14.
bangkok_sun <- sun(13 + 44 / 60, 105)
bangkok <- function(ea) eq6(34.8, 25.6, ea, (0.25 + 0.5 * 8.5 / bangkok_sun$hours) * bangkok_sun$ra,
                            (0.75 + 2e-5 * 2) * bangkok_sun$ra, 2, 2, 0.14)
less_damp <- list(example_17 = list(read = bangkok(2.85), by_tmin = bangkok(e0(25.6))),
                  example_18 = list(read = reckon(uccle)$eto_mm,
                                    by_highest = reckon(transform(uccle, rh_min_pct = NA))$eto_mm,
                                    by_lowest = reckon(transform(uccle, rh_max_pct = NA))$eto_mm,
                                    by_tmin = reckon(transform(uccle, rh_min_pct = NA, rh_max_pct = NA))$eto_mm))
stopifnot(round(less_damp$example_17$read, 2) == 5.72)

write_json(list(made_with = list(R = R.version.string, jsonlite = as.character(packageVersion("jsonlite"))),
                less_damp = less_damp, days = cbind(days, reckon(days))),
           "reference-days.json", digits = NA, na = "null", auto_unbox = TRUE, pretty = TRUE)
