import { describe, expect, test } from 'vitest';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import type { Garden } from '../../../src/garden/garden.ts';
import { type LateNitrogen, lateNitrogen } from '../../../src/ledger/feeding/late-nitrogen.ts';
import { nitrogenOf } from '../../../src/ledger/feeding/nitrogen-of.ts';
import type { Span } from '../../../src/ledger/feeding/span.ts';
import { type SpotFed, spotsFed } from '../../../src/ledger/feeding/spots-fed.ts';
import type { MaterialRecord } from '../../../src/records/material.ts';
import { ANR_34 } from '../../published/nutrients/printed.ts';
import { linkTexts } from '../../reading/garden-texts.ts';

const reference = loadReference('data/reference');

/** Round figures, so that sums can be done in the head. */
const material = (id: MaterialRecord['id'], more: Partial<MaterialRecord>): MaterialRecord => {
  const found = reference.materials.find((one) => one.id === id);
  if (!found) throw new Error(`there is no ${id}`);
  return { ...found, ...more };
};
const COMPOST = material('compost', {
  n_of_100_low: 1,
  n_of_100_high: 2,
  first_year_n_of_100_low: 10,
  first_year_n_of_100_high: 20,
  kg_per_l_low: 0.5,
  kg_per_l_high: 1,
});
const MATERIALS = reference.materials.map((one) => (one.id === 'compost' ? COMPOST : one));

const SPOTS =
  'beds: [{id: E, area_m2: 12}]\nspots:\n  - {id: S1, kind: mound, bed: E}\n  - {id: S2, kind: mound, bed: E}\n  - {id: S3, kind: mound, bed: E}\n';
const CROP =
  'id: globe\nnames: {en: globe}\nplurals: {en: globes}\nslip: none\nfruit_on_ground: yes\nripe_days: {set_days_low: 40, set_days_high: 50, planted_days_low: 85, sources: [trade-practice]}\n';

function gardenOf(feeding: string, flowering = '', { spots = SPOTS, crop = CROP } = {}): Garden {
  const { garden, problems } = linkTexts({
    'garden.yaml': `name: T\nedition: home\nunits: metric\npaper: A4\nlocale: en-GB\nmeasures: {barrow_l: 80}\n${spots}`,
    'crops/globe.yaml': crop,
    'varieties.yaml': '- {id: amber, name: Amber, crop: globe, seed: unknown}\n',
    'seasons/2025/season.yaml': 'label: 2025\nstarts_on: 2025-04-01\nends_on: 2025-10-31\n',
    'seasons/2025/plantings.yaml': ['S1', 'S2', 'S3']
      .map((spot) => `- {id: P${spot}, spot: ${spot}, variety: amber, planted_on: 2025-05-20, plants_set: 2}\n`)
      .join(''),
    'seasons/2025/feeding.yaml': feeding,
    'seasons/2025/flowering.yaml': flowering,
  });
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (!garden || errors.length > 0) throw new Error(`invalid garden: ${JSON.stringify(errors)}`);
  return garden;
}

const NO_AMOUNT = { mass_kg: null, volume_l: null, barrows: null, label_n: null };
const MEASURES = { can_l: 10, can_measured: false, barrow_l: 80, barrow_measured: true };
const near = (span: Span | null, low: number, high: number): void => {
  expect(span?.low).toBeCloseTo(low, 10);
  expect(span?.high).toBeCloseTo(high, 10);
};

describe('the nitrogen of one entry', () => {
  test.each(ANR_34)('%f in a hundred are %s lb a ton, as Ohio State prints it', (percent, lb_ton) => {
    const kg_in_lb = 0.45359237;
    const { kg } = nitrogenOf(
      { ...NO_AMOUNT, material: 'bought-feed', mass_kg: 2000 * kg_in_lb, label_n: percent },
      material('bought-feed', {}),
      MEASURES,
    );
    expect(((kg?.low ?? 0) / kg_in_lb).toFixed(lb_ton.split('.')[1]?.length ?? 0)).toBe(lb_ton);
    expect(kg?.high).toBe(kg?.low);
  });

  // 2 barrows of 80 l, 0.5 to 1 kg a litre: 80 to 160 kg; 1 to 2 of 100: 0.8 to 3.2 kg; of it 10 to 20 of 100.
  test('barrows are weighed and reckoned by the sources, least with least and most with most', () => {
    const { kg, first_year_kg } = nitrogenOf({ ...NO_AMOUNT, material: 'compost', barrows: 2 }, COMPOST, MEASURES);
    near(kg, 0.8, 3.2);
    near(first_year_kg, 0.08, 0.64);
  });

  test('a label goes before the sources, a scale before a volume, and what is bought counts whole', () => {
    near(
      nitrogenOf({ ...NO_AMOUNT, material: 'compost', mass_kg: 10, volume_l: 500, label_n: 3 }, COMPOST, MEASURES).kg,
      0.3,
      0.3,
    );
    const bought = { ...NO_AMOUNT, material: 'bought-feed', mass_kg: 2, label_n: 7 } as const;
    near(nitrogenOf(bought, material('bought-feed', {}), MEASURES).first_year_kg, 0.14, 0.14);
  });

  test('what is not told has no number and says what is missing', () => {
    const of = (feeding: object, one: MaterialRecord) =>
      nitrogenOf({ ...NO_AMOUNT, material: one.id, ...feeding }, one, MEASURES);
    expect(of({}, COMPOST)).toEqual({ kg: null, first_year_kg: null, lacks: 'amount-untold' });
    expect(of({ mass_kg: 1 }, material('bought-feed', {})).lacks).toBe('content-untold');
    // Nobody tells what a litre of it weighs, nor how much of bone meal the first year has.
    expect(of({ volume_l: 5, label_n: 4 }, material('liquid-feed', {})).lacks).toBe('amount-untold');
    expect(of({ mass_kg: 1 }, material('bone-meal', {}))).toMatchObject({ first_year_kg: null, lacks: null });
  });

  test('ash and lime hold none, however much was given', () => {
    for (const id of ['wood-ash', 'lime'] as const)
      expect(nitrogenOf({ ...NO_AMOUNT, material: id }, material(id, {}), MEASURES).kg).toEqual({ low: 0, high: 0 });
  });
});

describe('what each spot got', () => {
  const fed = (feeding: string, spots?: string): SpotFed[] => {
    const garden = gardenOf(feeding, '', spots ? { spots } : {});
    const [season] = garden.seasons;
    return season ? spotsFed(garden, season, MATERIALS) : [];
  };

  // 800 to 3200 g over 12 m² of three spots; then 140 g on the 4 m² of S2.
  test('an entry without spots is spread over the whole garden, one with spots over theirs', () => {
    const [one, two] = fed(
      '- {given_on: 2025-04-20, material: compost, barrows: 2}\n- {given_on: 2025-06-01, spots: [S2], material: bought-feed, mass_kg: 2, label_n: 7}\n',
    );
    near(one?.n_g_per_m2 ?? null, 800 / 12, 3200 / 12);
    near(two?.n_g_per_m2 ?? null, 800 / 12 + 35, 3200 / 12 + 35);
    near(two?.first_year_g_per_m2 ?? null, 80 / 12 + 35, 640 / 12 + 35);
    expect([one?.entries, two?.entries, two?.untold, two?.lacks]).toEqual([1, 2, 0, null]);
  });

  test('an amount in a word counts as told and adds no number', () => {
    const [one, ...others] = fed(
      '- {given_on: 2025-06-01, spots: [S1], material: bought-feed, mass_kg: 2, label_n: 7}\n- {given_on: 2025-06-02, spots: [S1], material: compost, roughly: some}\n',
    );
    near(one?.n_g_per_m2 ?? null, 35, 35);
    expect([one?.entries, one?.untold]).toEqual([2, 1]);
    expect(others).toEqual([]);
    expect(fed('- {given_on: 2025-06-02, spots: [S1], material: compost, roughly: some}\n')[0]).toMatchObject({
      n_g_per_m2: null,
      lacks: 'amount-untold',
    });
  });

  test('the first year’s share of some entries is summed, and the others are counted', () => {
    const [one] = fed(
      '- {given_on: 2025-06-01, spots: [S1], material: bought-feed, mass_kg: 2, label_n: 7}\n- {given_on: 2025-05-02, spots: [S1], material: bone-meal, mass_kg: 1}\n- {given_on: 2025-05-03, spots: [S1], material: bone-meal, mass_kg: 1}\n',
    );
    near(one?.first_year_g_per_m2 ?? null, 35, 35);
    expect(one?.share_untold).toBe(2);
  });

  test('a spot whose ground nobody knows makes the entry’s number unknown', () => {
    const spots =
      'spots: [{id: S1, kind: mound, area_m2: 4}, {id: S2, kind: tub}, {id: S3, kind: mound, area_m2: 4}]\n';
    const [one, two] = fed(
      '- {given_on: 2025-06-01, spots: [S1, S2], material: bought-feed, mass_kg: 2, label_n: 7}\n- {given_on: 2025-06-01, spots: [S2], material: lime, cups: 2}\n',
      spots,
    );
    expect(one?.lacks).toBe('area-missing');
    // Lime holds none, whatever the ground.
    expect([two?.n_g_per_m2, two?.untold]).toEqual([{ low: 0, high: 0 }, 1]);
  });
});

describe('nitrogen that came too late', () => {
  const late = (feeding: string, flowering = '', crop = CROP): LateNitrogen[] => {
    const garden = gardenOf(feeding, flowering, { crop });
    const { ledger, today } = bookOf({ reference }, garden, null).facts;
    expect(today).not.toBeNull();
    const [season] = garden.seasons;
    return season ? lateNitrogen(season, ledger.years, MATERIALS) : [];
  };
  const FED = '- {given_on: 2025-07-02, spots: [S1, S3], material: liquid-feed, roughly: some}\n';
  const flower = (planting: string, day: string): string =>
    `- {seen_on: ${day}, planting: ${planting}, what: first-female}\n`;
  const told = (one: LateNitrogen) => [one.spots.join(' '), one.flower, one.same_day, one.bears, one.given.text];

  test('after the first female flower, on its day, and not before it', () => {
    const flowering = flower('PS1', '2025-06-25') + flower('PS3', '2025-07-02');
    expect(late(FED, flowering).map(told)).toEqual([
      ['S1', 'seen', false, 'perhaps', '2025-07-02'],
      ['S3', 'seen', true, 'perhaps', '2025-07-02'],
    ]);
    // A male flower ends nothing.
    const male = '- {seen_on: 2025-06-20, planting: PS1, what: first-male}\n';
    expect(late(FED, male + flower('PS1', '2025-07-03') + flower('PS3', '2025-07-04'))).toEqual([]);
  });

  // 85 days to ripe less at most 50 from set: set from day 35, 24 June.
  test('where no flower is written down, from the day fruit may set', () => {
    expect(late(FED).map(told)).toEqual([['S1 S3', 'due', false, 'perhaps', '2025-07-02']]);
    expect(late(FED.replace('07-02', '06-24')).map(({ same_day }) => same_day)).toEqual([true]);
    expect(late(FED.replace('07-02', '06-23'))).toEqual([]);
    // Another spot's flower of day 31, 20 June, tells for those without one.
    expect(late(FED.replace('07-02', '06-23'), flower('PS2', '2025-06-20')).map(told)[0]?.[1]).toBe('due');
  });

  test('a crop of which nothing is told, and a flower never seen, flags nothing', () =>
    expect(late(FED, '', CROP.replace(/ripe_days.*\n/, ''))).toEqual([]));

  test('by its label, or by what the material holds', () => {
    const of = (more: string): string[] =>
      late(`- {given_on: 2025-07-02, spots: [S1], ${more}}\n`).map(({ bears }) => bears);
    expect(of('material: compost')).toEqual(['yes']);
    expect(of('material: liquid-feed, label_n: 0, label_k2o: 8')).toEqual([]);
    expect(of('material: other, label_n: 3')).toEqual(['yes']);
    expect(of('material: other')).toEqual([]);
    expect(of('material: wood-ash')).toEqual([]);
    expect(of('material: lime')).toEqual([]);
  });

  test('of a loose date only what is late by any reading', () => {
    expect(late(FED.replace('2025-07-02', '2025-06')).length).toBe(0);
    expect(late(FED.replace('2025-07-02', '2025-07')).length).toBe(1);
    expect(late(FED, flower('PS1', '2025-06-30..2025-07-03') + flower('PS3', '2025-07-03'))).toEqual([]);
  });
});
