# The numbers of frosts.ts: last frost before 1 July and first after it, each year of NOAA's Seattle record, for
# tests/agronomy/frost-days.test.ts. The test needs no R. Run at the root of the project:
#   Rscript tests/published/seattle-weather/frosts.R
# The same by awk, a line each year and threshold:
#   awk -F, -v y=2012 -v t=0 'substr($1,1,4)==y && $4<=t {if (substr($1,6,2)+0<=6) l=$1; else if (!f) f=$1}
#     END {print y, t, l, f}' node_modules/vega-datasets/data/seattle-weather.csv
days <- read.csv("node_modules/vega-datasets/data/seattle-weather.csv")
year <- substr(days$date, 1, 4)
early <- substr(days$date, 6, 7) <= "06"
for (threshold in c(0, -2)) {
  frost <- days$temp_min <= threshold
  last <- tapply(days$date[frost & early], year[frost & early], max)
  first <- tapply(days$date[frost & !early], year[frost & !early], min)
  print(data.frame(threshold, last = last[unique(year)], first = first[unique(year)]))
}
# Days from 1 July to the last frost, in order: the values of quantile type 1 (the inverse of the empirical distribution).
frost <- days$temp_min <= 0 & early
offset <- as.integer(as.Date(days$date) - as.Date(paste0(year, "-07-01")))
last <- tapply(offset[frost], year[frost], max)
print(quantile(last, c(1, 0.75, 0.5, 0.25), type = 1))
frost <- days$temp_min <= 0 & !early
first <- tapply(offset[frost], year[frost], min)
print(-quantile(-first, c(1, 0.75, 0.5, 0.25), type = 1))
