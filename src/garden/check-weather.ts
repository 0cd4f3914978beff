import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { WeatherDayRecord } from '../records/weather-day.ts';

/** Days entered twice, and readings that contradict each other. */
export function checkWeather(entries: readonly Entry<WeatherDayRecord>[]): Problem[] {
  const met = new Map<string, Entry<WeatherDayRecord>>();
  return entries.flatMap((entry) => {
    const { date } = entry.record;
    const first = met.get(date);
    met.set(date, first ?? entry);
    const twice =
      first === undefined
        ? []
        : [
            problemIn(entry, ['date'], {
              code: 'day-twice',
              message: `${date} stands already at ${placeOf(first, entry)}`,
              hint: 'keep one of the two rows',
            }),
          ];
    return [...twice, ...contradictions(entry)];
  });
}

/** A station may have a table and a list: the file is named where it is another. */
function placeOf({ source, path }: Entry<unknown>, from: Entry<unknown>): string {
  const { line } = source.locate(path);
  return source.file === from.source.file ? `line ${line}` : `line ${line} of ${source.file}`;
}

function contradictions(entry: Entry<WeatherDayRecord>): Problem[] {
  const { tmin_c, tmin_f, tmax_c, rain, rain_mm, entered } = entry.record;
  const problems: Problem[] = [];
  if (tmin_c !== null && tmax_c !== null && tmin_c > tmax_c) {
    problems.push(
      problemIn(entry, [tmin_f === null ? 'tmin_c' : 'tmin_f'], {
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
