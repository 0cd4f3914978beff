import { describe, expect, test } from 'vitest';
import { departure } from './departure.ts';
import { seasonGarden } from './garden.ts';
import { gardensOf } from './gardens.ts';
import { settingNamed } from './settings.ts';
import type { TrueDay } from './truth.ts';

interface WrittenDay {
  readonly rain: string;
  readonly highest: string;
  readonly lowest: string;
}

function table(text: string): Map<string, WrittenDay> {
  const [heading, ...rows] = text.trimEnd().split('\n');
  expect(heading).toBe('date,rain_mm,tmax_c,tmin_c');
  const dates = rows.map((row) => row.slice(0, 10));
  expect(dates).toEqual([...new Set(dates)].sort());
  return new Map(
    rows.map((row) => {
      const [date = '', rain = '', highest = '', lowest = ''] = row.split(',');
      return [date, { rain, highest, lowest }];
    }),
  );
}

/** Read to half marks: at most a quarter off, and on a mark. */
function near(written: string, value: number): void {
  expect(Number.isInteger(Number(written) * 2)).toBe(true);
  expect(Math.abs(Number(written) - value)).toBeLessThan(0.25 + 1e-9);
}

function rainNear(written: string, mm: number): void {
  if (written === 'trace') {
    expect(mm).toBeGreaterThan(0);
    expect(mm).toBeLessThan(0.25);
    return;
  }
  near(written, mm);
  expect(Number(written) > 0).toBe(mm >= 0.25);
  if (Number(written) === 0) expect(mm).toBe(0);
}

test('read in the evening, a row is its day, to half a mark', () => {
  const { texts, truth } = seasonGarden(settingNamed('3 seasons in blocks'), 5);
  const written = table(texts['weather/post.csv'] ?? '');
  expect([...written.keys()]).toEqual(truth.weather.map(({ date }) => date));
  expect([...written.values()].some(({ rain }) => rain === 'trace')).toBe(true);
  for (const { date, rain_mm, tmax_c, tmin_c } of truth.weather) {
    const { rain = '', highest = '', lowest = '' } = written.get(date) ?? {};
    rainNear(rain, rain_mm);
    near(highest, tmax_c);
    near(lowest, tmin_c);
  }
});

test('read in the morning, rain and the highest temperature are those of the day before', () => {
  const { texts, truth } = seasonGarden(settingNamed('1 season after 20 years of weather, read in the morning'), 5);
  const written = table(texts['weather/post.csv'] ?? '');
  expect([...written.keys()]).toEqual(truth.weather.map(({ date }) => date));
  expect(texts['garden.yaml']).toContain('read: morning');
  let before: TrueDay | null = null;
  let doubted = 0;
  for (const day of truth.weather) {
    const { rain = '', highest = '', lowest = '' } = written.get(day.date) ?? {};
    if (!before || day.date.endsWith('-03-01')) expect([rain, highest]).toEqual(['', '']);
    else {
      rainNear(rain, before.rain_mm);
      near(highest, before.tmax_c);
    }
    // Left out only where it would stand above the highest of the day before.
    if (lowest !== '') near(lowest, day.tmin_c);
    else {
      doubted++;
      expect(day.tmin_c).toBeGreaterThan(Number(highest) - 0.25);
    }
    before = day;
  }
  expect(doubted / truth.weather.length).toBeLessThan(0.05);
});

describe('gaps', () => {
  const gardens = gardensOf(settingNamed('2 seasons of few mounds, much left unwritten'), 40);

  test('4 % of days are missing, half of them as a blank row; the rest is as it was', () => {
    const [gone, blank]: [number[], number[]] = [[], []];
    for (const { texts, truth } of gardens) {
      const written = table(texts['weather/post.csv'] ?? '');
      for (const { date, rain_mm, tmax_c } of truth.weather) {
        const row = written.get(date);
        const isBlank = row !== undefined && row.rain + row.highest + row.lowest === '';
        gone.push(Number(!row || isBlank));
        if (!row || isBlank) blank.push(Number(isBlank));
        else if (gone.length < 3000) {
          rainNear(row.rain, rain_mm);
          near(row.highest, tmax_c);
        }
      }
    }
    expect(Math.abs(departure(gone, 0.04))).toBeLessThan(4);
    expect(Math.abs(departure(blank, 0.5))).toBeLessThan(4);
  });
});
