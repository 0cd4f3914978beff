import { expect, test } from 'vitest';
import { loadReference } from '../../src/cli/load-reference.ts';
import { inLanguage } from '../../src/garden/in-language.ts';
import type { CropRecord } from '../../src/records/crop.ts';

const { crops, materials, sources } = loadReference('data/reference');
const known = new Set(sources.map(({ id }) => id));

const TRAITS = [
  'sowing',
  'room',
  'season',
  'water',
  'feeding',
  'flowering',
  'troubles',
  'keeping',
  'seed',
] as const satisfies readonly (keyof CropRecord)[];

/** A trait no source was found for, `crop trait`, with the reason. None today. */
const ABSENT: Readonly<Record<string, string>> = {};

/** Single numbers of a trait that stand nowhere, `crop trait.key`, each looked for and not found or not meant for the crop. */
const LEFT_OUT: Readonly<Record<string, string>> = {
  'cucumber flowering.hand_set_of_ten_high': 'no source found',
  'cucumber flowering.hand_set_of_ten_low': 'no source found',
  'cucumber flowering.keep_fruits_high': 'picked young and all the time',
  'cucumber flowering.keep_fruits_low': 'picked young and all the time',
  'cucumber flowering.males_per_female_high': 'hangs on the kind; no source found',
  'cucumber flowering.males_per_female_low': 'hangs on the kind; no source found',
  'cucumber keeping.cure_days': 'not cured',
  'cucumber seed.past_flowering_days': 'no source found',
  'muskmelon feeding.k_high_kg_ha': 'no source found',
  'muskmelon feeding.k_low_kg_ha': 'no source found',
  'muskmelon feeding.p_high_kg_ha': 'no source found',
  'muskmelon feeding.p_low_kg_ha': 'no source found',
  'muskmelon flowering.hand_set_of_ten_high': 'no source found',
  'muskmelon flowering.hand_set_of_ten_low': 'no source found',
  'muskmelon flowering.males_per_female_high': 'no source found',
  'muskmelon flowering.males_per_female_low': 'no source found',
  'muskmelon flowering.visits_least': 'no source found',
  'muskmelon keeping.cure_days': 'not cured',
  'muskmelon seed.past_flowering_days': 'no source found',
  'tomato flowering.female_looks': 'its flowers are both',
  'tomato flowering.hand_set_of_ten_high': 'its flowers are both',
  'tomato flowering.hand_set_of_ten_low': 'its flowers are both',
  'tomato flowering.keep_fruits_high': 'hangs on the size of the kind',
  'tomato flowering.keep_fruits_low': 'hangs on the size of the kind',
  'tomato flowering.males_per_female_high': 'its flowers are both',
  'tomato flowering.males_per_female_low': 'its flowers are both',
  'tomato flowering.visits_least': 'shaken by wind and wings',
  'tomato keeping.cure_days': 'not cured',
  'tomato room.mound_plants_high': 'planted singly',
  'tomato room.mound_plants_low': 'planted singly',
  'tomato seed.past_flowering_days': 'ripe fruit has ripe seed',
  'watermelon keeping.cure_days': 'not cured',
  'winter-squash flowering.hand_set_of_ten_high': 'no source found',
  'winter-squash flowering.hand_set_of_ten_low': 'no source found',
  'winter-squash flowering.keep_fruits_high': 'hangs on the size of the kind',
  'winter-squash flowering.keep_fruits_low': 'hangs on the size of the kind',
  'winter-squash flowering.males_per_female_high': 'no source found',
  'winter-squash flowering.males_per_female_low': 'no source found',
  'winter-squash seed.past_flowering_days': 'no source found',
};

type Part = Readonly<Record<string, unknown>>;

/** Each trait that a crop has, troubles one by one, with a name to tell it by. */
const parts = crops.flatMap((crop) =>
  TRAITS.flatMap((trait): { readonly name: string; readonly part: Part }[] => {
    const found = crop[trait];
    if (!found) return [];
    if (!Array.isArray(found)) return [{ name: `${crop.id} ${trait}`, part: found as unknown as Part }];
    return found.map((one) => ({ name: `${crop.id} ${trait}.${one.id}`, part: one as unknown as Part }));
  }),
);

test('every crop has every trait; what is absent is listed with its reason', () => {
  expect(crops.map(({ id }) => id).sort()).toEqual(['cucumber', 'muskmelon', 'tomato', 'watermelon', 'winter-squash']);
  const absent = crops.flatMap((crop) => TRAITS.filter((trait) => !crop[trait]).map((trait) => `${crop.id} ${trait}`));
  expect(absent.sort()).toEqual(Object.keys(ABSENT).sort());
  const empty = parts.flatMap(({ name, part }) =>
    Object.entries(part).flatMap(([key, value]) => (value === null ? [`${name}.${key}`] : [])),
  );
  expect(empty.sort()).toEqual(Object.keys(LEFT_OUT).sort());
});

test('every trait and every trouble cites sources that are there, each once', () => {
  expect(parts.length).toBeGreaterThan(70);
  for (const { name, part } of parts) {
    const cited = part.sources as readonly string[];
    expect(cited.length, name).toBeGreaterThan(0);
    expect(
      cited.filter((id) => !known.has(id)),
      name,
    ).toEqual([]);
    expect(new Set(cited).size, name).toBe(cited.length);
  }
});

test('the least of a range is not above the most', () => {
  const ranged = [...parts, ...materials.map((material) => ({ name: material.id, part: material as unknown as Part }))];
  const pairs = ranged.flatMap(({ name, part }) =>
    Object.keys(part)
      .filter((key) => /_low(_|$)/.test(key))
      .map((key) => ({ name: `${name} ${key}`, low: part[key], high: part[key.replace('_low', '_high')] })),
  );
  expect(pairs.length).toBeGreaterThan(80);
  for (const { name, low, high } of pairs) {
    expect(low === null, name).toBe(high === null);
    if (low !== null) expect(low as number, name).toBeLessThanOrEqual(high as number);
  }
});

test('days to come up are told from cool to warm, inside the warmth seed comes up in', () => {
  for (const { id, sowing } of crops) {
    const soils = (sowing?.emergence ?? []).map(({ soil_c }) => soil_c);
    expect(soils.length, id).toBeGreaterThanOrEqual(3);
    expect(soils, id).toEqual([...new Set(soils)].sort((a, b) => a - b));
    expect(Math.max(...soils), id).toBeLessThanOrEqual(sowing?.soil_most_c ?? Number.NaN);
    const order = [sowing?.soil_least_c, sowing?.soil_best_low_c, sowing?.soil_best_high_c, sowing?.soil_most_c];
    expect(order, id).toEqual([...order].sort((a, b) => (a ?? 0) - (b ?? 0)));
  }
});

test('a crop has six to eight troubles with ids of their own, told in English, and none names a dose', () => {
  for (const { id, troubles } of crops) {
    const own = troubles ?? [];
    expect(own.length, id).toBeGreaterThanOrEqual(6);
    expect(own.length, id).toBeLessThanOrEqual(8);
    expect(new Set(own.map((one) => one.id)).size, id).toBe(own.length);
    for (const { id: trouble, names, looks, does } of own) {
      const told = [names, looks, does].map((words) => inLanguage(words, 'en'));
      expect(told.every(Boolean), `${id} ${trouble}`).toBe(true);
      expect(told.join(' '), `${id} ${trouble}`).not.toMatch(/\d|\bspray|\bdose|pesticide|fungicide|insecticide/i);
    }
  }
});

test('a coefficient is highest in the full stage, and the basal one below it', () => {
  for (const { id, water } of crops) {
    if (!water) throw new Error(`${id} has no water`);
    expect(water.kc_middle, id).toBeGreaterThan(Math.max(water.kc_initial, water.kc_end));
    expect(water.kcb_initial, id).toBeLessThan(water.kc_initial);
    expect(water.kcb_middle, id).toBeLessThan(water.kc_middle);
    expect(water.kcb_end, id).toBeLessThan(water.kc_end);
  }
});
