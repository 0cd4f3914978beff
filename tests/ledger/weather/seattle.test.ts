import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/day.ts';
import { linkGarden } from '../../../src/garden/link.ts';
import { openLedger } from '../../../src/ledger/ledger.ts';
import { readGardenRecords } from '../../../src/reading/garden-records.ts';
import { SEATTLE } from '../../published/seattle-weather/daily.ts';
import { YEARS } from '../../published/seattle-weather/sums.ts';

/** A garden beside NOAA's station, whose season is the given dates of each year, read from its weather file to the ledger. */
function seattle(from: string, to: string, heat: string) {
  const texts = {
    'garden.yaml': `name: Test plot\nedition: home\nunits: metric\npaper: A4\nlocale: en-US\nweather: {station: noaa, read: midnight}\nheat_units: ${heat}\nthresholds: {wet_day_mm: 0.1}\nspots: []\n`,
    'weather/noaa.csv': `date,rain_mm,tmax_c,tmin_c\n${SEATTLE.map(({ date, rain_mm, tmax_c, tmin_c }) => [date, rain_mm, tmax_c, tmin_c].join()).join('\n')}\n`,
    ...Object.fromEntries(
      YEARS.map(({ year }) => [
        `seasons/${year}/season.yaml`,
        `label: ${year}\nstarts_on: ${year}-${from}\nends_on: ${year}-${to}\n`,
      ]),
    ),
  };
  const files = Object.entries(texts).map(([path, text]) => ({ path, bytes: new TextEncoder().encode(text) }));
  const { garden, problems } = linkGarden(readGardenRecords(files), []);
  if (!garden || problems.length > 0) throw new Error(JSON.stringify(problems));
  return openLedger(garden, '2015-12-31' as Day).weather;
}

describe('Seattle, from its weather file to the figures of the book', () => {
  const whole = seattle('01-01', '12-31', '{method: average, base_c: 10}');
  const summers = seattle('05-01', '09-30', '{method: clipped, base_c: 10, cap_c: 30}');
  const warm = seattle('05-01', '09-30', '{method: average, base_c: 15, cap_c: 30}');

  test.each(YEARS)('$year: rain, hot days, heat and the longest dry run to the printed digit', (year) => {
    const [all, summer] = [whole.get(year.year), summers.get(year.year)];
    expect(all?.measures.rain_mm.figure.value?.toFixed(1)).toBe(year.rain_mm);
    expect(all?.measures.hot_days.figure.value).toBe(year.hot_days);
    expect(all?.measures.dry_run_days.figure.value).toBe(year.dry_spell.days);
    expect(all?.window.days).toHaveLength(year.days);
    expect(summer?.measures.rain_mm.figure.value?.toFixed(1)).toBe(year.rain_may_sep_mm);
    expect(summer?.measures.heat_c_days.figure.value?.toFixed(2)).toBe(year.clipped_10_30);
    expect(summer?.heat.average.figure.value?.toFixed(2)).toBe(year.average_10);
    expect(warm.get(year.year)?.measures.heat_c_days.figure.value?.toFixed(2)).toBe(year.average_15);
  });

  test('four years are too few to rank', () => {
    expect(summers.get('2015')?.measures.mean_c.standing).toBeNull();
  });
});
