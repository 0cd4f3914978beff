import type { Day } from '../../../src/day.ts';
import { openLedger } from '../../../src/ledger/ledger.ts';
import type { SeasonWeather } from '../../../src/ledger/weather/season-weather.ts';
import { planting, smallGarden } from '../small-garden.ts';

/** The weather of the season 2025 (1 April to 31 October) from rows of a table, as known on a day. */
export function weatherOf(
  rows: string,
  today: string,
  more: { readonly read?: string; readonly settings?: string; readonly header?: string } = {},
): SeasonWeather | null {
  const { header = 'date,rain_mm,tmax_c,tmin_c', ...garden } = more;
  const weather = `${header}\n${rows}\n`;
  const ledger = openLedger(smallGarden({ plantings: planting('P1', 'S1'), weather, ...garden }), today as Day);
  return ledger.weather.get('2025') ?? null;
}

/** One row a day from the first of April of a year, as many as there are values. */
export const aprilRows = (year: number, cells: readonly string[]): string =>
  cells.map((cell, index) => `${year}-04-${String(index + 1).padStart(2, '0')},${cell}`).join('\n');
