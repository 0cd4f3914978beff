import { expect, test } from 'vitest';
import type { Day } from '../../src/day.ts';
import { openLedger } from '../../src/ledger/ledger.ts';
import type { SeasonYield } from '../../src/ledger/season-yield.ts';
import { picked, planting, type Rows, smallGarden } from './small-garden.ts';

const END = '2025-12-01' as Day;

function season(rows: Rows, today = END): SeasonYield {
  const [only] = openLedger(smallGarden(rows), today).yields;
  if (!only) throw new Error('the season is missing');
  return only;
}

const weighed = (id: string, of: string, kg: number): string => picked(id, of, `mass_kg: ${kg}, condition: whole`);

test('totals by plants set and by ground, by hand: 3 fruits, 12 kg, 6 plants, a bed of 12 m² shared by 3 spots', () => {
  const { garden } = season({
    plantings:
      planting('P1', 'S1', ', plants_alive: 1') +
      planting('P2', 'S2', ', plants_alive: 2') +
      planting('P3', 'S3', ', plants_alive: 2'),
    fruits: weighed('F1', 'P1', 3) + weighed('F2', 'P2', 4) + weighed('F3', 'P3', 5),
  });
  expect(garden.measures.kg.total).toMatchObject({
    value: 12,
    n: 3,
    interval: null,
    reach: 'what-happened',
    reason: null,
  });
  expect(garden.measures.kg.per_plant_set.value).toBe(2);
  expect(garden.measures.kg.per_plant_alive.value).toBeCloseTo(12 / 5, 12);
  expect(garden.area_m2.value).toBe(12);
  expect(garden.measures.sound_kg.per_m2.value).toBe(1);
});

test('a sum that lacks something is a least figure, and says what it lacks', () => {
  const { garden } = season({
    plantings: planting('P1', 'S1') + planting('P2', 'S2'),
    fruits: weighed('F1', 'P1', 3) + picked('F2', 'P1', 'reason: ripe'),
  });
  expect(garden.measures.kg.total).toMatchObject({
    value: 3,
    reason: { code: 'at-least', values: { told: 1, of: 2, missing: 1 } },
  });
  expect(garden.measures.kg.per_plant_alive).toMatchObject({ value: null, reason: { code: 'plants-alive-missing' } });
});

test('nothing weighed, nothing recorded, no ground: no number, and the reason', () => {
  const spots = '  - {id: S1, kind: tub}\n';
  const unweighed = season({
    spots,
    plantings: planting('P1', 'S1'),
    fruits: picked('F1', 'P1', 'reason: ripe'),
  }).garden;
  expect(unweighed.measures.kg.total).toMatchObject({ value: null, reason: { code: 'none-weighed' } });
  expect(unweighed.measures.sound_fruits.total).toMatchObject({ value: null, reason: { code: 'condition-missing' } });
  expect(unweighed.measures.fruits.per_m2).toMatchObject({ value: null, reason: { code: 'area-missing' } });
  const blank = season({ spots, plantings: planting('P1', 'S1') }).garden;
  expect(blank.measures.fruits.total).toMatchObject({ value: null, reason: { code: 'no-harvest-record' } });
});

test('a spot planted twice counts in totals and in no mean', () => {
  const twice = season({
    plantings: planting('P1', 'S1') + planting('P2', 'S1'),
    fruits: weighed('F1', 'P1', 3) + weighed('F2', 'P2', 5),
  });
  expect(twice.garden.measures.kg.total.value).toBe(8);
  const { means, left_out } = twice.crops[0]?.comparisons.kg ?? { means: [], left_out: [] };
  expect(means[0]?.mounds).toEqual([]);
  expect(left_out.map(({ code }) => code)).toEqual(['replanted', 'replanted']);
});

const SPOTS = ['S1', 'S2', 'S3', 'S4', 'S5', 'S6'].map((id) => `  - {id: ${id}, kind: mound}\n`).join('');

/** Six mounds, two plants each: amber gives 2, 3, 4 kg a plant, birch 5, 6, 10. */
const SIX: Rows = {
  spots: SPOTS,
  plantings: SPOTS.match(/S\d/g)
    ?.map(
      (spot, index) =>
        `- {id: P${index}, spot: ${spot}, variety: ${index < 3 ? 'amber' : 'birch'}, planted_on: 2025-05-20, plants_set: 2}\n`,
    )
    .join('') as string,
  fruits: [4, 6, 8, 10, 12, 20].map((kg, index) => weighed(`F${index}`, `P${index}`, kg)).join(''),
};

test('means and difference of two varieties, by hand: pooled variance 4 on 4 degrees of freedom, t = 2.132', () => {
  const comparison = season(SIX).crops[0]?.comparisons.sound_kg;
  const [amber, birch] = comparison?.means ?? [];
  // Sums of squares 2 and 14 about means 3 and 7: pooled variance 16/4 = 4, standard error of a mean √(4/3).
  // t(0.95; 4) = 2.132, printed tables; a mean's half-width is 2.132 × 1.1547 = 2.462.
  expect(amber?.mean.value).toBeCloseTo(3, 12);
  expect(birch?.mean.value).toBeCloseTo(7, 12);
  expect(amber?.mean.interval?.low).toBeCloseTo(3 - 2.462, 2);
  expect(birch?.mean.interval?.high).toBeCloseTo(7 + 2.462, 2);
  expect(amber?.mean).toMatchObject({
    n: 3,
    replicate: { kind: 'mound', count: 3 },
    reach: 'another-spot-this-summer',
    method: 'mound-mean',
  });
  // Difference: −4 ± 2.132 × √(4 × 2/3) = −4 ± 3.481.
  const [difference] = comparison?.differences ?? [];
  expect(difference?.difference.id).toBe('yield.2025.difference.amber.birch.sound_kg_per_plant');
  expect(difference?.difference.interval?.low).toBeCloseTo(-4 - 3.481, 2);
  expect(difference?.difference.interval?.high).toBeCloseTo(-4 + 3.481, 2);
});

test('the range of a mean is cut at zero', () => {
  const rows = {
    ...SIX,
    fruits: [0.2, 0.2, 8, 10, 12, 20].map((kg, index) => weighed(`F${index}`, `P${index}`, kg)).join(''),
  };
  expect(season(rows).crops[0]?.comparisons.sound_kg.means[0]?.mean.interval?.low).toBe(0);
});

test('two mounds of a variety are shown and not averaged, yet help to tell the spread', () => {
  const fruits = [4, 6, 10, 12, 20]
    .map((kg, index) => weighed(`F${index}`, `P${index < 2 ? index : index + 1}`, kg))
    .join('');
  const comparison = season({ ...SIX, fruits }).crops[0]?.comparisons.sound_kg;
  expect(comparison?.means[0]?.mean).toMatchObject({
    value: null,
    interval: null,
    reason: { code: 'few-mounds', values: { count: 2, wanted: 3 } },
  });
  expect(comparison?.means[1]?.mean.value).toBeCloseTo(7, 12);
  expect(comparison?.fit?.df).toBe(3);
  expect(comparison?.differences).toEqual([]);
});

test('a mound with one fruit unweighed is left out of the means of mass and kept in those of fruits', () => {
  const fruits = `${SIX.fruits}${picked('F9', 'P0', 'condition: whole')}`;
  const comparisons = season({ ...SIX, fruits }).crops[0]?.comparisons;
  expect(comparisons?.kg.left_out.map(({ code }) => code)).toEqual(['not-all-told']);
  expect(comparisons?.fruits.means[0]?.mean.value).toBeCloseTo((2 / 2 + 1 / 2 + 1 / 2) / 3, 12);
});

test('every figure names a basis that lists its records', () => {
  const garden = smallGarden(SIX);
  const ledger = openLedger(garden, END);
  const mean = ledger.yields[0]?.crops[0]?.comparisons.kg.means[0]?.mean;
  const spot = ledger.yields[0]?.spots[0]?.totals.measures.kg.total;
  expect(ledger.bases.all()[spot?.basis ?? '']).toEqual(['fruits/2025/F0', 'plantings/2025/P0']);
  expect(ledger.bases.all()[mean?.basis ?? '']).toHaveLength(12);
});
