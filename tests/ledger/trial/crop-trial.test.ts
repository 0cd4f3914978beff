import { expect, test } from 'vitest';
import type { Garden } from '../../../src/garden/garden.ts';
import { keptInMemory } from '../../../src/kept.ts';
import { createBases } from '../../../src/ledger/bases.ts';
import { mostOf } from '../../../src/ledger/trial/claim.ts';
import { type CropTrial, cropTrials } from '../../../src/ledger/trial/crop-trial.ts';
import { trialNumbers } from '../../../src/ledger/trial/trial-numbers.ts';
import { linkTexts } from '../../reading/garden-texts.ts';
import { chanceOf } from '../../simulated/chance.ts';
import { shuffled } from '../../simulated/shuffled.ts';
import { fruit, onlyTrial, planted, type SeasonRows, trialGarden, trialTexts } from './trial-garden.ts';

const GROWN = ['amber', 'birch', 'copper', 'dusk', 'ember'];
const BITS = [0.4, -0.3, 0.1, -0.5, 0.2, 0.3, -0.1];

/** Five varieties in two spots each with two fruits, weighed, tested and tasted; `level` is added in this season. */
function season(year: number, level: number, { varieties = GROWN, more = '' } = {}): SeasonRows {
  const rows = varieties.flatMap((variety) => {
    const at = GROWN.indexOf(variety);
    return [0, 1].map((spot) => {
      const id = `P${2 * at + spot}`;
      const fruits = [0, 1].map((one) => {
        const brix = (9 + 0.5 * at + level + (BITS[(2 * at + spot + 3 * one + year) % 7] ?? 0)).toFixed(1);
        const kg = (4 + 0.3 * at + level + (BITS[(at + 3 * spot + one + year) % 7] ?? 0)).toFixed(2);
        return fruit(
          `${id}-${one}`,
          id,
          `pick: {picked_on: ${year}-08-1${one + spot}, mass_kg: ${kg}, condition: whole}, cut: {cut_on: ${year}-08-15, state: prime, brix_centre: ${brix}, liked: ${['so-so', 'yes', 'very'][(at + one + year) % 3]}}`,
        );
      });
      return { planting: planted(year, id, `S${2 * at + spot + 1}`, variety, more), fruits: fruits.join('') };
    });
  });
  return {
    plantings: rows.map(({ planting }) => planting).join(''),
    fruits: rows.map(({ fruits }) => fruits).join(''),
  };
}

/** The same without its cuts. */
const weighed = ({ plantings, fruits = '' }: SeasonRows): SeasonRows => ({
  plantings,
  fruits: fruits.replace(/, cut: \{[^}]*\}/g, ''),
});
const BIG = 'weights: {big: 1}\n';

const THREE = { 2023: season(2023, 0), 2024: season(2024, 1), 2025: season(2025, -1) };
const garden = trialGarden(THREE);
const trial = onlyTrial(garden);

const rowOf = (one: CropTrial, trait: string, variety: string) => {
  const row = one.traits.find((own) => own.trait.id === trait)?.rows.find((own) => own.variety.id === variety);
  if (!row) throw new Error(`no ${trait} of ${variety}`);
  return row;
};

test('every figure has its own id, beginning with the crop, and a value or a reason', () => {
  const figures = [
    ...trial.traits.flatMap(({ rows, summers }) => [
      ...rows.flatMap(({ level, difference, better, best }) => [level, difference, better, best]),
      ...summers.map(({ share }) => share),
    ]),
    ...trial.list.flatMap(({ better, best }) => [better, best]),
    ...trial.held_out.map(({ said }) => said),
    ...trial.sound.map(({ of_ten }) => of_ten),
  ];
  const ids = figures.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids.filter((id) => !id.startsWith('variety.globe.'))).toEqual([]);
  expect(figures.filter(({ value, reason }) => (value === null) === (reason === null))).toEqual([]);
  expect(figures.filter(({ value }) => value !== null && !Number.isFinite(value))).toEqual([]);
  expect(rowOf(trial, 'brix', 'birch')).toMatchObject({
    level: { id: 'variety.globe.brix.birch.level', unit: 'brix', n: 12, replicate: { kind: 'mound', count: 6 } },
    difference: { id: 'variety.globe.brix.birch.difference', unit: 'brix', reach: 'next-summer-here' },
    better: { id: 'variety.globe.brix.birch.better_of_twenty', unit: 'of_twenty', interval: null },
  });
  expect(rowOf(trial, 'mass_kg', 'birch').difference.unit).toBe('times');
  expect(trial.traits.find((one) => one.trait.id === 'brix')?.summers.map(({ share }) => share.id)).toEqual(
    ['2023', '2024', '2025'].map((year) => `variety.globe.brix.season.${year}`),
  );
});

test('why there is no figure: the yardstick, too few values, too few varieties', () => {
  expect(trial.yardstick).toMatchObject({ by: 'longest', variety: { id: 'amber' } });
  expect(rowOf(trial, 'brix', 'amber').difference).toMatchObject({ value: null, reason: { code: 'yardstick' } });
  const thin = onlyTrial(trialGarden({ 2025: season(2025, 0, { varieties: ['amber', 'birch', 'copper'] }) }));
  expect(rowOf(thin, 'sound_kg_per_plant', 'birch').level).toMatchObject({
    value: null,
    reason: { code: 'few-values', values: { count: 2, wanted: 3 } },
  });
  expect(rowOf(thin, 'brix', 'birch').best).toMatchObject({ value: null, reason: { code: 'few-varieties' } });
  expect(rowOf(trial, 'brix', 'birch').best.value).not.toBeNull();
});

test('a basis lists every record under its figure: plantings with all their fruits, or the fruits alone', () => {
  const bases = createBases();
  const [own] = cropTrials(garden, bases, keptInMemory());
  if (!own) throw new Error('no trial');
  const keysUnder = (basis: string): readonly string[] => bases.all()[basis] ?? [];
  const fruits = garden.seasons.flatMap(({ plantings }) =>
    plantings.flatMap((one) => one.fruits.map(({ key }) => key)),
  );
  const plantings = garden.seasons.flatMap((one) => one.plantings.map(({ key }) => key));
  expect(keysUnder(rowOf(own, 'brix', 'birch').level.basis)).toEqual(fruits.toSorted());
  expect(keysUnder(rowOf(own, 'sound_kg_per_plant', 'birch').level.basis)).toEqual(
    [...fruits, ...plantings].toSorted(),
  );
  const birch = garden.seasons.flatMap((one) => one.plantings.filter(({ variety }) => variety?.id === 'birch'));
  const sound = own.sound.find(({ variety }) => variety.id === 'birch');
  expect(keysUnder(sound?.of_ten.basis ?? '')).toEqual(
    birch.flatMap((one) => [one.key, ...one.fruits.map(({ key }) => key)]).toSorted(),
  );
  // A season left out is told from the others' records.
  const held = own.held_out.find(({ trait, season: left }) => trait.id === 'brix' && left.slug === '2025');
  expect(keysUnder(held?.said.basis ?? '').length).toBe(40);
  expect(keysUnder(held?.said.basis ?? '').some((key) => key.includes('/2025/'))).toBe(false);
});

test('one season reaches to another spot of that summer, several to the next', () => {
  const one = onlyTrial(trialGarden({ 2025: THREE[2025] }));
  expect(rowOf(one, 'brix', 'birch').difference.reach).toBe('another-spot-this-summer');
  expect(one.list[1]?.better.reach).toBe('another-spot-this-summer');
  expect(trial.list[1]?.better.reach).toBe('next-summer-here');
  expect(one.held_out).toEqual([]);
  // A season that says nothing of soundness carries it no further.
  const blank = { plantings: planted(2024, 'P0', 'S1', 'amber') };
  expect(onlyTrial(trialGarden({ 2024: blank, 2025: THREE[2025] })).sound[0]?.of_ten.reach).toBe(
    'another-spot-this-summer',
  );
});

test('no claim is surer than the seasons shared allow, from above and from below', () => {
  const chances = (one: CropTrial): number[] => one.list.flatMap(({ better }) => better.value ?? []);
  for (const [seasons, rows] of [
    [1, { 2025: weighed(THREE[2025]) }],
    [2, { 2024: weighed(THREE[2024]), 2025: weighed(THREE[2025]) }],
    [3, { 2023: weighed(THREE[2023]), 2024: weighed(THREE[2024]), 2025: weighed(THREE[2025]) }],
  ] as const) {
    const told = onlyTrial(trialGarden(rows, { settings: BIG }));
    expect(told.list.every(({ entry }) => entry.seasons === seasons)).toBe(true);
    expect(Math.max(...chances(told))).toBe(mostOf(seasons));
    const below = onlyTrial(trialGarden(rows, { settings: BIG, of: { ember: ', yardstick: yes' } }));
    expect(Math.min(...chances(below))).toBe(20 - mostOf(seasons));
  }
});

test('a chance in one trait counts the seasons that trait was shared, not those of others', () => {
  const told = onlyTrial(
    trialGarden({ 2024: weighed(THREE[2024]), 2025: THREE[2025] }, { settings: 'weights: {sweet: 1}\n' }),
  );
  const ember = told.list.find(({ variety }) => variety.id === 'ember');
  expect(ember?.entry.seasons).toBe(1);
  expect(ember?.better.value).toBe(16);
  expect(rowOf(told, 'brix', 'ember').better.value).toBe(16);
  expect(rowOf(told, 'mass_kg', 'ember').better.value).toBeGreaterThan(16);
});

test('weights: the grower’s with blanks as nothing, the house’s where none are given', () => {
  expect(trial).toMatchObject({ own_weights: false, weights: { sweet: 1, plenty: 1, early: 1, liked: 1 } });
  const own = onlyTrial(trialGarden(THREE, { settings: 'weights: {sweet: 3, looks: 2}\n' }));
  expect(own.own_weights).toBe(true);
  expect(own.weights).toEqual({
    sweet: 3,
    plenty: 0,
    big: 0,
    early: 0,
    crisp: 0,
    juicy: 0,
    reliable: 0,
    looks: 2,
    liked: 0,
  });
  expect(own.wishes.filter(({ weight }) => weight > 0)).toEqual([{ key: 'sweet', trait: 'brix', weight: 3 }]);
  const none = onlyTrial(trialGarden(THREE, { settings: 'weights: {sweet: 0, crisp: 2}\n' }));
  expect(none.list).toEqual([]);
  expect(none.traits.length).toBe(trial.traits.length);
});

test('placed: by lot or chosen where all plantings say so, else not alike', () => {
  const placed = (...ways: string[]) =>
    onlyTrial(
      trialGarden(
        Object.fromEntries(ways.map((more, at) => [2024 + at, season(2024 + at, 0, { varieties: ['amber'], more })])),
      ),
    ).placed;
  expect(placed(', placed: lot', ', placed: lot')).toBe('lot');
  expect(placed(', placed: lot', ', placed: chosen')).toBeNull();
  expect(placed(', placed: lot', '')).toBeNull();
  expect(placed('', '')).toBe('unknown');
});

test('before any harvest nothing is compared', () => {
  const bare = onlyTrial(trialGarden({ 2025: { plantings: planted(2025, 'P1', 'S1', 'amber') } }));
  expect(bare).toMatchObject({ yardstick: null, traits: [], list: [], next: [], held_out: [], sound: [], tastes: [] });
  expect(bare.varieties).toHaveLength(6);
});

/** Amber and birch in a spot each for three seasons, birch behind by so many kilograms, fruits scattered. */
const behind = (kg: number): Garden => {
  const rows = (year: number): SeasonRows => ({
    plantings: planted(year, 'P0', 'S1', 'amber') + planted(year, 'P1', 'S2', 'birch'),
    fruits: [0, 1, 2, 3]
      .map((at) => {
        const [of, one] = [at % 2, Math.floor(at / 2)];
        const mass = (5 - kg * of + 2 * (BITS[(year + 3 * of + 2 * one) % 7] ?? 0)).toFixed(2);
        return fruit(`F${at}`, `P${of}`, `pick: {picked_on: ${year}-08-12, mass_kg: ${mass}}`);
      })
      .join(''),
  });
  return trialGarden({ 2023: rows(2023), 2024: rows(2024), 2025: rows(2025) }, { settings: BIG });
};

test('moved by the prior are those that stand elsewhere at half or twice the usual spread', () => {
  const [near, far, close] = [behind(0.2), behind(3), behind(1.7)].map(onlyTrial);
  expect([near?.list[1]?.entry.standing, near?.moved_by_prior]).toEqual(['listed', []]);
  expect([far?.list[1]?.entry.standing, far?.moved_by_prior]).toEqual(['goes', []]);
  // Close to 1 in 10: where summers and mounds may differ twice as much, its lag may be theirs.
  expect(close?.list[1]?.entry.standing).toBe('goes');
  expect(close?.moved_by_prior.map(({ id }) => id)).toEqual(['birch']);
  const numbers = trialNumbers({
    values: close?.values ?? [],
    varieties: close?.varieties.map(({ id }) => id) ?? [],
    yardstick: 'amber',
    weights: { big: 1 },
  });
  expect(numbers.half_pull[1]?.better).toBeLessThan(0.1);
  expect(numbers.double_pull[1]?.better).toBeGreaterThan(0.1);
});

const figuresOf = (own: Garden): unknown => JSON.parse(JSON.stringify(onlyTrial(own)));

test('the same trial in any order of rows and files', () => {
  const texts = trialTexts(THREE);
  const reordered = (seed: number): Garden => {
    const chance = chanceOf(seed);
    const mixed = shuffled(chance, Object.entries(texts)).map(([path, text]) => {
      const rows = text.split(/(?<=\n)(?=- )/);
      return [path, /plantings|fruits|varieties/.test(path) ? shuffled(chance, rows).join('') : text] as const;
    });
    const { garden: found } = linkTexts(Object.fromEntries(mixed));
    if (!found) throw new Error('invalid test garden');
    return found;
  };
  expect(figuresOf(reordered(1))).toEqual(JSON.parse(JSON.stringify(trial)));
});

test('kept or made anew the same, after a round through text', () => {
  const kept = keptInMemory();
  const told = (): unknown => JSON.parse(JSON.stringify(cropTrials(garden, createBases(), kept)[0]));
  const throughText = {
    find: (kind: string, inputs: string): unknown => {
      const found = kept.find(kind, inputs);
      return found === undefined ? undefined : JSON.parse(JSON.stringify(found));
    },
    keep: kept.keep,
  };
  const first = told();
  expect(JSON.parse(JSON.stringify(cropTrials(garden, createBases(), throughText)[0]))).toEqual(first);
  expect(first).toEqual(JSON.parse(JSON.stringify(trial)));
});
