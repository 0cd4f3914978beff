import { expect, test } from 'vitest';
import { loadReference } from '../../src/cli/load-reference.ts';
import { CROPS, STAGES } from '../published/crop-water/fao-56-tables.ts';
import { DAYS, SOIL_F as EMERGENCE_F } from '../published/emergence/harrington-minges.ts';
import { GERMINATION_OF_100 } from '../published/germination-minimums/cfr-201-31.ts';
import { SOIL_F, SQUASH_DAYS } from '../published/soil-warmth/oregon-state.ts';

const { crops } = loadReference('data/reference');
const cropOf = (id: string) => {
  const found = crops.find((crop) => crop.id === id);
  if (!found) throw new Error(`no crop ${id}`);
  return found;
};
const celsius = (fahrenheit: number): number => Math.round((fahrenheit - 32) / 1.8);

test.each([
  ['watermelon', 'Watermelon'],
  ['muskmelon', 'Melon'],
  ['winter-squash', 'Squash'],
  ['winter-squash', 'Pumpkin'],
  ['cucumber', 'Cucumber'],
  ['tomato', 'Tomato'],
])('of 100 sold seeds of %s as many come up as the federal table asks of %s', (id, kind) => {
  expect(cropOf(id).seed?.germination_of_100).toBe(GERMINATION_OF_100[kind]);
});

test.each([
  ['watermelon', 'watermelon'],
  ['muskmelon', 'sweet melons'],
  ['winter-squash', 'pumpkin winter squash'],
  ['cucumber', 'cucumber fresh market'],
  ['tomato', 'tomato'],
])('the coefficients, height, roots and depletion of %s are those of FAO paper 56 for %s', (id, row) => {
  const { water } = cropOf(id);
  const printed = CROPS[row];
  expect([water?.kc_initial, water?.kc_middle, water?.kc_end]).toEqual(printed?.kc);
  expect([water?.kcb_initial, water?.kcb_middle, water?.kcb_end]).toEqual(printed?.kcb);
  expect(water?.height_m).toBe(printed?.height_m);
  expect([water?.root_low_m, water?.root_high_m]).toEqual(printed?.root_m);
  expect(water?.depletion).toBe(printed?.depletion);
});

test.each([
  ['watermelon', ['water melons']],
  ['muskmelon', ['sweet melons', 'cantaloupe']],
  ['winter-squash', ['pumpkin winter squash']],
  ['cucumber', ['cucumber']],
  ['tomato', ['tomato']],
] as const)('the stages of %s are every row FAO paper 56 prints, and add up to its totals', (id, rows) => {
  const printed = rows.flatMap((row) => STAGES[row] ?? []);
  const written = (cropOf(id).water?.stages ?? []).map((stage) => {
    const days = [stage.initial_days, stage.development_days, stage.middle_days, stage.late_days];
    return [...days, days.reduce((sum, one) => sum + one, 0)];
  });
  expect(written).toEqual(printed);
});

test.each([
  ['watermelon', 'watermelon'],
  ['muskmelon', 'muskmelon'],
  ['cucumber', 'cucumber'],
  ['tomato', 'tomato'],
])('the days to come up of %s are the printed ones of %s, °F told as °C', (id, row) => {
  const printed = (DAYS[row] ?? []).flatMap((days, index) =>
    days === null ? [] : [{ soil_c: celsius(EMERGENCE_F[index] ?? Number.NaN), days }],
  );
  expect(emergenceOf(id)).toEqual(printed);
});

test('the days to come up of winter squash are the printed ones of squash', () => {
  const printed = SQUASH_DAYS.map((days, index) => ({ soil_c: celsius(68 + 9 * index), days }));
  expect(emergenceOf('winter-squash')).toEqual(printed);
});

const emergenceOf = (id: string) => (cropOf(id).sowing?.emergence ?? []).map(({ soil_c, days }) => ({ soil_c, days }));

test.each([
  ['watermelon', 'Watermelon'],
  ['muskmelon', 'Muskmelon'],
  ['winter-squash', 'Squash'],
  ['cucumber', 'Cucumber'],
  ['tomato', 'Tomato'],
])('the warmth of the soil for seed of %s is the printed one of %s, in whole °C', (id, row) => {
  const { sowing } = cropOf(id);
  expect([sowing?.soil_least_c, sowing?.soil_best_low_c, sowing?.soil_best_high_c, sowing?.soil_most_c]).toEqual(
    SOIL_F[row]?.map(celsius),
  );
});

/** 1 lb an acre is 1.1209 kg a hectare; of the oxides, P is 0.4364 of P₂O₅ and K 0.8301 of K₂O (molar masses). */
const LB_ACRE = 1.1209;
const P = 0.4364;
const K = 0.8301;
/** 4 lb to 100 square feet, a tenth of it N and of each oxide; an acre has 43,560 square feet. */
const TEN_TEN_TEN = 4 * 0.1 * 435.6 * LB_ACRE;

test.each([
  ['watermelon', 'Florida, 150-100-150 lb an acre', { n: 150 * LB_ACRE, p: null, k: 150 * LB_ACRE * K }],
  ['muskmelon', 'Arizona, 140 lb an acre taken up', { n: 140 * LB_ACRE, p: null, k: null }],
  [
    'winter-squash',
    'Massachusetts, 4 lb of 10-10-10 to 100 square feet',
    { n: TEN_TEN_TEN, p: TEN_TEN_TEN * P, k: TEN_TEN_TEN * K },
  ],
  [
    'cucumber',
    'Oklahoma, 120, 20 and 115 lb an acre taken up',
    { n: 120 * LB_ACRE, p: 20 * LB_ACRE, k: 115 * LB_ACRE },
  ],
])('the most %s is fed is what is printed, in elements and kg a hectare: %s', (id, _printed, most) => {
  const { feeding } = cropOf(id);
  expect(feeding?.n_high_kg_ha).toBe(Math.round(most.n));
  if (most.p !== null) expect(feeding?.p_high_kg_ha).toBe(Math.round(most.p));
  if (most.k !== null) expect(feeding?.k_high_kg_ha).toBe(Math.round(most.k));
});
