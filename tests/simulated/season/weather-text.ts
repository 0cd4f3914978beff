import type { Chance } from '../chance.ts';
import { dayText } from './calendar.ts';
import { type Slips, slips } from './slips.ts';
import type { WeatherDay } from './weather.ts';

const STEP = 0.5;

/** A number as read off a gauge or thermometer with half marks. */
const read = (value: number): string => String(Math.round(value / STEP) * STEP);

/** Rain under half a mark is a trace. */
const rainText = (mm: number): string => (mm > 0 && mm < STEP / 2 ? 'trace' : read(mm));

/** A station's table over any years. A missing day has no row, or a row left blank, as often. */
export function weatherText(
  years: readonly (readonly WeatherDay[])[],
  reading: 'evening' | 'morning',
  rates: Slips,
  chance: Chance,
): string {
  const rows = years.flatMap((days) =>
    days.flatMap((day, index) => {
      const told = reading === 'morning' ? (days[index - 1] ?? null) : day;
      const missing = slips(rates.weather_day_missing, chance);
      const blank = chance() < 0.5;
      if (missing) return blank ? `${dayText(day.day)},,,\n` : [];
      return rowText(day, told);
    }),
  );
  return `date,rain_mm,tmax_c,tmin_c\n${rows.join('')}`;
}

/** `told` is the day whose rain and highest temperature the row carries; null before the first. */
function rowText({ day, tmin_c }: WeatherDay, told: WeatherDay | null): string {
  const lowest = read(tmin_c);
  const highest = told ? read(told.tmax_c) : '';
  // A lowest temperature above the highest beside it, as a sudden warm spell gives in the morning, is doubted and left out.
  const doubted = highest !== '' && Number(lowest) > Number(highest);
  return `${dayText(day)},${told ? rainText(told.rain_mm) : ''},${highest},${doubted ? '' : lowest}\n`;
}
