import { describe, expect, test } from 'vitest';
import type { CropModel } from '../../../content/rain/crop-model.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

const reference = loadReference('data/reference');

/** July and August without rain but for 20 mm two days before these pickings. */
const WET = [5, 14, 23];
const PICKINGS = [2, 5, 8, 11, 14, 17, 20, 23, 26, 29];
const MOUNDS = [1, 2, 3, 4];

const day = (number: number): string => `2025-08-${String(number).padStart(2, '0')}`;

/** A garden of one variety, a fruit of every mound on every picking day, with sugar as told. */
function cropModel(brix: (day: number, mound: number) => number, settings = ''): CropModel {
  const lines = <T>(rows: readonly T[], line: (row: T) => string): string =>
    rows.map((row) => `${line(row)}\n`).join('');
  const { garden, problems } = linkTexts({
    'garden.yaml': `name: Test plot\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\nweather: {station: post, read: evening}\n${settings}spots:\n${lines(MOUNDS, (id) => `  - {id: S${id}, kind: mound}`)}`,
    'crops/globe.yaml': 'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\n',
    'varieties.yaml': '- {id: amber, name: Amber, crop: globe, seed: unknown}\n',
    'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-10-31\n',
    'seasons/2025/plantings.yaml': lines(
      MOUNDS,
      (id) => `- {id: P${id}, spot: S${id}, variety: amber, planted_on: 2025-05-20, plants_set: 4}`,
    ),
    'seasons/2025/fruits.yaml': lines(
      PICKINGS.flatMap((at) => MOUNDS.map((mound) => ({ at, mound }))),
      ({ at, mound }) =>
        `- {id: F${at}-${mound}, planting: P${mound}, fate: picked, pick: {picked_on: ${day(at)}, reason: ripe}, cut: {cut_on: ${day(at)}, state: prime, brix_centre: ${brix(at, mound).toFixed(1)}}}`,
    ),
    'weather/post.csv': `date,rain_mm\n${lines(
      Array.from({ length: 40 }, (_, index) => index),
      (index) => {
        const date = new Date(Date.UTC(2025, 6, 23 + index)).toISOString().slice(0, 10);
        return `${date},${WET.some((at) => day(at - 2) === date) ? 20 : 0}`;
      },
    )}`,
  });
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid garden: ${JSON.stringify(errors)}`);
  const page = bookOf({ reference }, garden, null).pages.find(({ path }) => path === 'rain/');
  const [crop] = (page?.model as { crops: CropModel[] } | undefined)?.crops ?? [];
  if (!crop) throw new Error('no crop');
  return crop;
}

/** Fruits differ as these do, day for day and mound for mound, and for no cause. */
const luck = (at: number, mound: number): number => [0.2, -0.3, 0.1, 0.3, -0.2, 0, -0.1][(at * 3 + mound * 5) % 7] ?? 0;
const afterRain = (at: number): boolean => WET.includes(at);

describe('the verdict', () => {
  test('rain that took 1.2 °Brix thins; a tongue that tells 1 °Brix needs less than the 20 mm', () => {
    const model = cropModel((at, mound) => 10 - (afterRain(at) ? 1.2 : 0) + luck(at, mound));
    expect(model.verdict).toBe('thins');
    expect(model.evidence).toMatchObject({ fruits: 40, picking_days: 10, wet_spells: 3, dry_days: 7 });
    expect(20 * (model.thinning ?? 0)).toBeGreaterThan(1);
    expect(model.tongue_mm).toBeCloseTo(1 / (model.thinning ?? 0), 9);
    expect(model.thinner?.low).toBeGreaterThan(0);
    expect(model.thinner?.low).toBeCloseTo(-(model.slope.interval?.high ?? 0), 12);
  });

  test('a coarser tongue needs more rain', () => {
    const sugar = (at: number, mound: number): number => 10 - (afterRain(at) ? 1.2 : 0) + luck(at, mound);
    const [fine, coarse] = [cropModel(sugar), cropModel(sugar, 'sugar: {tongue_brix: 2}\n')];
    expect(coarse.tongue_mm).toBeCloseTo(2 * (fine.tongue_mm ?? 0), 9);
  });

  test('rain that took nothing is not shown, and the size ruled out is named', () => {
    const model = cropModel((at, mound) => 10 + luck(at, mound));
    expect(model.verdict).toBe('unclear');
    expect(model.tongue_mm).toBeNull();
    expect(model.at_most).toBeCloseTo(-(model.slope.interval?.low ?? 0), 12);
  });

  test('fruit that was sweeter after rain is said to be so', () => {
    const model = cropModel((at, mound) => 10 + (afterRain(at) ? 1.2 : 0) + luck(at, mound));
    expect([model.verdict, model.tongue_mm]).toEqual(['sweetens', null]);
  });

  test('without temperatures nobody can say whether the wet days were the cool ones', () => {
    const { companions } = cropModel((at, mound) => 10 + luck(at, mound));
    expect(companions.map(({ kind, r }) => [kind, r === null])).toEqual([
      ['warmth', true],
      ['lateness', false],
    ]);
  });
});
