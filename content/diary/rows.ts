import type { Dated } from '../../src/dated.ts';
import type { WeatherDay } from '../../src/garden/garden.ts';
import type { SeasonWeather } from '../../src/ledger/weather/season-weather.ts';
import type { Entry } from './entry.ts';

/** One day of the list, or one span: what happened, and the weather where the day is known and somebody read it. */
export interface DiaryRow {
  readonly date: Dated;
  readonly entries: readonly Entry[];
  readonly weather: Pick<WeatherDay, 'tmax_c' | 'rain_mm' | 'rain'> | null;
}

/** Water is given too often for a list: the strip shows the days, and the chapter on water the amounts. */
const IN_THE_LIST = ({ lane }: Entry): boolean => lane !== 'watered';

export function diaryRows(entries: readonly Entry[], weather: SeasonWeather | null): DiaryRow[] {
  const byText = new Map<string, Entry[]>();
  for (const one of entries.filter(IN_THE_LIST)) byText.set(one.date.text, [...(byText.get(one.date.text) ?? []), one]);
  const days = new Map((weather?.window.days ?? []).flatMap((day) => (day === null ? [] : [[day.date, day] as const])));
  return [...byText.values()].flatMap((group) => {
    const [first] = group;
    if (!first) return [];
    const { date } = first;
    return [{ date, entries: group, weather: (date.kind === 'day' && days.get(date.first)) || null }];
  });
}
