import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import { seasonStrip } from '../../src/charts/season-strip.ts';
import { addDays } from '../../src/day.ts';
import { readDay } from '../../src/ledger/weather/read-day.ts';
import type { SeasonWeather } from '../../src/ledger/weather/season-weather.ts';
import type { Window } from '../../src/ledger/weather/window.ts';
import { daysTable } from './tables.ts';

/** The season day by day; null when nobody read a gauge or a thermometer. */
export function stripChart({ format }: Facts, weather: SeasonWeather): Chart | null {
  if (!weather.has_readings) return null;
  const { settings, season, dry_spells } = weather;
  const window = readPart(weather.window);
  const { hot_day_c, cool_night_c, soaking_day_mm } = settings.thresholds;
  return {
    id: `weather-${season.slug.toLowerCase()}`,
    title: `The season day by day, ${season.label}`,
    description: describe(weather, (value, unit) => format.amount(value, unit)),
    spec: seasonStrip(
      {
        first: window.first,
        last: window.last,
        days: window.days.map(readDay),
        hot_c: hot_day_c,
        cool_c: cool_night_c,
        labelled_mm: soaking_day_mm,
        spans: dry_spells.map(({ first, last, days }) => ({ first, last, words: format.count(days) })),
      },
      format,
    ),
    table: daysTable(weather),
  };
}

/** A window without the days at either end that nobody wrote of: a page of grey says nothing. */
function readPart({ first, days }: Window): Pick<Window, 'first' | 'last' | 'days'> {
  const isRead = days.map((day) => day !== null);
  const [from, to] = [isRead.indexOf(true), isRead.lastIndexOf(true)];
  return { first: addDays(first, from), last: addDays(first, to), days: days.slice(from, to + 1) };
}

function describe(
  { measures, warmest, coldest, dry_spells }: SeasonWeather,
  amount: (value: number, unit: 'c' | 'mm') => string,
): string {
  const parts = [
    warmest.figure.value === null ? null : `Highest ${amount(warmest.figure.value, 'c')}`,
    coldest.figure.value === null ? null : `lowest ${amount(coldest.figure.value, 'c')}`,
    measures.rain_mm.figure.value === null ? null : `rain in all ${amount(measures.rain_mm.figure.value, 'mm')}`,
    measures.hot_days.figure.value === null ? null : `hot days ${measures.hot_days.figure.value}`,
    `dry spells ${dry_spells.length}`,
  ];
  return `${parts.filter((part) => part !== null).join(', ')}.`;
}
