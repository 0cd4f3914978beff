import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { WeatherDayRecord } from '../records/weather-day.ts';

/** Days entered twice, and readings that contradict each other. */
export function checkWeather(entries: readonly Entry<WeatherDayRecord>[]): Problem[] {
  const lines = new Map<string, number>();
  return entries.flatMap((entry) => {
    const { date } = entry.record;
    const first = lines.get(date);
    if (first === undefined) lines.set(date, entry.source.locate(entry.path).line);
    const twice =
      first === undefined
        ? []
        : [
            problemIn(entry, ['date'], {
              code: 'day-twice',
              message: `${date} stands already at line ${first}`,
              hint: 'keep one of the two rows',
            }),
          ];
    return [...twice, ...contradictions(entry)];
  });
}

function contradictions(entry: Entry<WeatherDayRecord>): Problem[] {
  const { tmin_c, tmax_c, rain, rain_mm, entered } = entry.record;
  const problems: Problem[] = [];
  if (tmin_c !== null && tmax_c !== null && tmin_c > tmax_c) {
    problems.push(
      problemIn(entry, ['tmin_c'], {
        code: 'min-above-max',
        message: 'the lowest temperature is above the highest',
        hint: 'the two may have changed places',
      }),
    );
  }
  const wet = rain_mm !== null && (rain_mm > 0 || entered.rain_mm === 'trace');
  if (rain !== null && rain_mm !== null && (rain === 'none') === wet) {
    problems.push(
      problemIn(entry, ['rain'], {
        code: 'rain-differs',
        message: `the gauge and the word "${rain}" do not agree`,
        hint: 'keep the gauge',
      }),
    );
  }
  return problems;
}
