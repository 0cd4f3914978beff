import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/day.ts';
import { NOTHING_KEPT } from '../../../src/kept.ts';
import { openLedger } from '../../../src/ledger/ledger.ts';
import { asCounted } from '../../../src/ledger/pick-or-wait/as-counted.ts';
import { dilutionOf, USUAL_DILUTION } from '../../../src/ledger/pick-or-wait/dilution.ts';
import { lostShare } from '../../../src/ledger/pick-or-wait/lost-share.ts';
import type { CropRain } from '../../../src/ledger/rain-sugar/crop-rain.ts';
import { planting, smallGarden } from '../small-garden.ts';

const DAYS = 'ripe_days: {set_days_low: 36, set_days_high: 44, sources: [trade-practice]}\n';
const SIGNS =
  'signs:\n  - {id: tendril, drawing: tendril-dry, names: {en: Coil}, helps: {en: see it}, on_card: yes, shown: {tendril: [dry]}, sources: [trade-practice]}\n';
const TODAY = '2025-09-30' as Day;

test('a chance as if counted on so many: the beta distribution’s own variance gives the count back', () => {
  // Beta(2, 8): mean 0.2, variance 0.2 × 0.8 / 11 (Johnson, Kotz & Balakrishnan 1995, chapter 25, from memory).
  const half = 1.645 * Math.sqrt(0.16 / 11);
  expect(asCounted(0.2, { low: 0.2 - half, high: 0.2 + half, level: 0.9 }).counted).toBeCloseTo(10, 9);
  expect(asCounted(0.2, { low: 0, high: 1, level: 0.9 }).counted).toBe(1);
  expect(asCounted(0.2, { low: 0.2, high: 0.2, level: 0.9 }).counted).toBe(1000);
});

describe('thinning by a soaking day', () => {
  const rain = (estimate: number, se: number, df: number, value: number | null = estimate): CropRain =>
    ({
      evidence: { picking_days: 14 },
      slope: { value },
      fit: { estimate, se, df },
      settings: { tongue_brix: 1, rain_days: 3 },
    }) as unknown as CropRain;

  // Upper 5 points in 100 of t: 1.812 with 10 degrees of freedom, 2.015 with 5 (Fisher & Yates, table III, from memory).
  test.each([
    [0.812, 10, 0.05],
    [1.015, 5, 0.05],
    [-1, 10, 0.5],
    [-2.812, 10, 0.95],
  ])('a slope %d standard errors of 20 mm from nothing: %d, %d', (slope, df, chance) => {
    const found = dilutionOf(rain(slope / 20, 1 / 20, df), 20);
    expect(found.from).toBe('slope');
    expect(found.chance.mean).toBeCloseTo(chance, 3);
    expect(found.chance.counted).toBe(14);
  });

  test('without a slope that may be printed the usual stands', () => {
    for (const none of [null, rain(-0.1, 0.01, 10, null)])
      expect(dilutionOf(none, 20)).toMatchObject({ from: 'usual', chance: USUAL_DILUTION });
  });
});

describe('lost by the next look', () => {
  const fruit = (id: string, of: string, rest: string): string =>
    `- {id: ${id}, planting: ${of}, set: {set_on: 2025-06-20}, ${rest}}\n`;
  const plantings = planting('P1', 'S1') + planting('P2', 'S2') + planting('P3', 'S3');
  const shareOf = (fruits: string) => {
    const garden = smallGarden({ plantings, fruits, crop: DAYS });
    const crop = garden.crops.get('globe');
    if (!crop) throw new Error('no crop');
    return lostShare(crop, garden.seasons, NOTHING_KEPT);
  };
  const picked = (on: string, more = ''): string => `fate: picked, pick: {picked_on: ${on}}${more}`;

  test('looks are two days apart, from 36 days after set, 26 July, on', () => {
    const looks = (rest: string) => shareOf(fruit('A', 'P1', rest)).looks;
    expect(looks(picked('2025-07-25'))).toBe(0);
    expect(looks(picked('2025-07-26'))).toBe(1);
    expect(looks(picked('2025-07-28'))).toBe(1);
    expect(looks(picked('2025-07-29'))).toBe(2);
    expect(looks('fate: thinned, end: {ended_on: 2025-08-05}')).toBe(0);
  });

  test('rot, animals, theft and over are losses; a split, frost and a ripe cut are none', () => {
    const lost = (rest: string) => shareOf(fruit('A', 'P1', rest)).lost;
    for (const to of ['rot', 'animal', 'theft'])
      expect(lost(`fate: lost, end: {ended_on: 2025-08-01, lost_to: ${to}}`), to).toBe(1);
    for (const to of ['split', 'frost', 'unknown'])
      expect(lost(`fate: lost, end: {ended_on: 2025-08-01, lost_to: ${to}}`), to).toBe(0);
    expect(lost(picked('2025-08-01', ', cut: {cut_on: 2025-08-01, state: over}'))).toBe(1);
    expect(lost(picked('2025-08-01', ', cut: {cut_on: 2025-08-01, state: prime}'))).toBe(0);
  });

  test('told from three mounds and twenty looks on; till then 1 in 10', () => {
    // 14 days past: seven looks each.
    const three = ['P1', 'P2', 'P3'].map((of, at) => fruit(`F${at}`, of, picked('2025-08-09'))).join('');
    const found = shareOf(three);
    expect(found).toMatchObject({ from: 'looks', looks: 21, mounds: 3, lost: 0 });
    expect(found.chance.mean).toBeLessThan(0.1);
    const two = ['P1', 'P2', 'P2'].map((of, at) => fruit(`F${at}`, of, picked('2025-08-09'))).join('');
    expect(shareOf(two)).toMatchObject({ from: 'usual', looks: 21, mounds: 2, chance: { mean: 0.1, counted: 5 } });
  });
});

describe('the card of a garden', () => {
  const picksOf = (settings = '', crop = `${DAYS}${SIGNS}`) =>
    openLedger(smallGarden({ plantings: planting('P1', 'S1'), crop, settings }), TODAY).picks;

  test('takes the house’s words for losses nobody named', () => {
    const [usual] = picksOf();
    expect(usual?.own_losses).toEqual([]);
    expect(usual?.losses).toEqual({ unripe: 'much', split: 'some', dilution: 'little', lost: 'much' });
    const [own] = picksOf('losses: {unripe: little, lost: some}\n');
    expect(own?.own_losses).toEqual(['unripe', 'lost']);
    expect(own?.losses).toEqual({ unripe: 'little', split: 'some', dilution: 'little', lost: 'some' });
  });

  test('by hand: 8 in 10 ripe, rain likely, guesses all through', () => {
    // Waiting: 0.8 × (0.1 × 2 + 0.2 × 1) + 0.1 × 4 = 0.72; picking: 0.2 × 4 = 0.8. With a little loss for unripe: 0.2.
    const cell = (settings: string) => picksOf(settings)[0]?.rows.at(-1)?.cells.likely;
    expect(cell('')?.waiting_costs).toBeCloseTo(0.72 - 0.8, 1);
    expect(cell('')?.answer).toBe('either');
    expect(cell('losses: {unripe: little}\n')?.waiting_costs).toBeCloseTo(0.72 - 0.2, 1);
    expect(picksOf()[0]?.rows[0]?.cells['none-likely'].answer).toBe('wait');
  });

  test('where too few cuts tell what ticks mean it says so; a crop without signs, or eaten young, has none', () => {
    expect(picksOf()[0]?.ticked).toEqual({ ticks: 2, row: 8, own: false });
    expect(picksOf('', DAYS)).toEqual([]);
    expect(picksOf('', `eaten: young\n${DAYS}${SIGNS}`)).toEqual([]);
  });

  test('before the first season it is all guesses', () => {
    const garden = smallGarden({ plantings: planting('P1', 'S1'), crop: `${DAYS}${SIGNS}` });
    const [none] = openLedger({ ...garden, seasons: [] }, null).picks;
    expect([none?.storms.chance.from, none?.dilution.from, none?.lost.from]).toEqual(['prior', 'usual', 'usual']);
  });
});
