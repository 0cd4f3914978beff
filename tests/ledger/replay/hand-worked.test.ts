import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/day.ts';
import { keptInMemory, NOTHING_KEPT } from '../../../src/kept.ts';
import { createBases } from '../../../src/ledger/bases.ts';
import { type CropReplay, replay } from '../../../src/ledger/replay/replay.ts';
import { weeksOf } from '../../../src/ledger/replay/weeks.ts';
import { drawnSeason, drawnWeather, plantings, textGarden } from './replay-garden.ts';

const cutOn = (id: string, on: string, state: string): string =>
  `- {id: ${id}, planting: P1, fate: picked, pick: {picked_on: ${on}}, cut: {cut_on: ${on}, state: ${state}}}\n`;
const look = (id: string, tendril: string): string => `{fruit: ${id}, tendril: ${tendril}}`;

/** 14 ripe of 20: 12 of them with a dry tendril, and 1 of the 6 unripe. */
const FIRST = Array.from({ length: 20 }, (_, at) => ({
  id: `F${at + 1}`,
  state: at < 14 ? 'prime' : 'unripe',
  tendril: at < 12 || at === 14 ? 'dry' : 'green',
}));
const SEASONS = {
  2024: {
    plantings: plantings(2024),
    fruits: FIRST.map(({ id, state }) => cutOn(id, '2024-08-10', state)).join(''),
    visits: `- {id: V1, visited_on: 2024-08-09, fruits: [${FIRST.map(({ id, tendril }) => look(id, tendril)).join(', ')}]}\n`,
  },
  2025: {
    plantings: plantings(2025),
    fruits:
      cutOn('F1', '2025-08-06', 'prime') +
      cutOn('F2', '2025-08-06', 'unripe') +
      cutOn('F3', '2025-08-07', 'unripe') +
      cutOn('F4', '2025-08-08', 'prime'),
    visits: `- {id: V1, visited_on: 2025-08-04, fruits: [${look('F1', 'dry')}, ${look('F2', 'green')}, ${look('F3', 'dry')}, ${look('F4', 'dry')}]}\n`,
  },
};

function only(of = replay(textGarden(SEASONS), createBases(), NOTHING_KEPT)): CropReplay {
  const [crop, ...more] = of.crops;
  if (!crop || more.length > 0) throw new Error(`not one crop but ${of.crops.length}`);
  return crop;
}

describe('a tiny garden, worked by hand', () => {
  const crop = only();
  const claim = (fruit: string) => crop.claims.find((one) => one.fruit === fruit);

  test('weeks are those of the Saturdays', () => {
    // 6 April 2024 and 5 April 2025 were Saturdays.
    const spanOf = (year: number) => ({ starts_on: `${year}-04-01` as Day, ends_on: `${year}-10-31` as Day });
    expect(weeksOf(spanOf(2024))[0]).toEqual({ day: '2024-04-06', until: '2024-04-12' });
    expect(weeksOf(spanOf(2025))[0]).toEqual({ day: '2025-04-05', until: '2025-04-11' });
    expect(weeksOf({ starts_on: '2025-04-05' as Day, ends_on: '2025-04-11' as Day })).toHaveLength(1);
    expect(weeksOf({ starts_on: '1969-12-26' as Day, ends_on: '1970-01-02' as Day })[0]?.day).toBe('1969-12-27');
  });

  test('in the first summer nothing could be claimed, in the second four times', () => {
    expect(crop).toMatchObject({ looked: 24, unclaimed: 20 });
    expect(crop.claims.map(({ season, week, looked_on, cuts }) => [season, week, looked_on, cuts])).toEqual(
      Array.from({ length: 4 }, () => ['2025', '2025-08-02', '2025-08-04', 20]),
    );
  });

  test('what the plain ways said then', () => {
    // (14 + ½) / (20 + 1); of 13 dry ones 12 were ripe, of 7 green ones 2, each drawn to the share by one fruit.
    const base = 14.5 / 21;
    expect(claim('F1')).toMatchObject({ best_sign: 'tendril' });
    expect(claim('F1')?.base_chance).toBeCloseTo(base, 12);
    expect(claim('F1')?.sign_chance).toBeCloseTo((12 + base) / 14, 12);
    expect(claim('F2')?.sign_chance).toBeCloseTo((2 + base) / 8, 12);
  });

  test('what came: the look of the fourth fruit no longer held', () => {
    expect(['F1', 'F2', 'F3', 'F4'].map((fruit) => [claim(fruit)?.state, claim(fruit)?.missed])).toEqual([
      ['prime', false],
      ['unripe', false],
      ['unripe', true],
      [null, false],
    ]);
    expect(crop.claims.map(({ fruit }) => fruit)[0]).toBe('F3');
    expect(crop.claims.at(-1)?.fruit).toBe('F4');
  });

  test('the score', () => {
    const base = 14.5 / 21;
    const [dry, green] = [(12 + base) / 14, (2 + base) / 8];
    expect(crop.claim_score).toMatchObject({ judged: 3, missed: 1, bold: { claims: 2, came: 1 } });
    expect(crop.claim_score?.scores.base).toBeCloseTo(((1 - base) ** 2 + 2 * base ** 2) / 3, 12);
    expect(crop.claim_score?.scores.sign).toBeCloseTo(((1 - dry) ** 2 + green ** 2 + dry ** 2) / 3, 12);
    expect(crop.figures.bold_came).toMatchObject({
      id: 'ripe.replay.globe.claims.six_and_more_came',
      value: 1,
      method: 'ripe-replay',
    });
  });

  test('without days of set there is no window, without a station no advice', () => {
    expect(crop).toMatchObject({ windows: [], window_score: null, advice: [], advice_score: null, has_gauge: false });
  });
});

test('kept numbers are those made now', () => {
  const garden = textGarden(
    { 2024: drawnSeason(2024, 21), 2025: drawnSeason(2025, 22) },
    { weather: drawnWeather([2024, 2025], 23) },
  );
  const kept = keptInMemory();
  const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
  const fresh = replay(garden, createBases(), NOTHING_KEPT);
  const first = replay(garden, createBases(), {
    find: kept.find,
    // As a folder keeps them: as text.
    keep: (kind, inputs, value) => kept.keep(kind, inputs, plain(value)),
  });
  const again = replay(garden, createBases(), kept);
  expect(only(fresh).window_score).not.toBeNull();
  expect(only(fresh).advice_score).not.toBeNull();
  expect(first).toEqual(fresh);
  expect(again).toEqual(fresh);
});
