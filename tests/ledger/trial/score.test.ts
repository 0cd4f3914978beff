import { expect, test } from 'vitest';
import { type ScorePart, scoreOf, scoreParts } from '../../../src/ledger/trial/score.ts';
import type { TraitId } from '../../../src/ledger/trial/trait.ts';
import type { TraitFit } from '../../../src/ledger/trial/trait-fit.ts';
import type { TraitFound, VarietyNumbers } from '../../../src/ledger/trial/trait-numbers.ts';
import type { TraitValue } from '../../../src/ledger/trial/trait-value.ts';
import { DRAWS, drawn, partOf } from './drawn.ts';
import { value } from './trial-garden.ts';

const ALL = ['amber', 'birch', 'copper', 'dusk'];
const YEARS = ['2021', '2022', '2023', '2024', '2025'];

/** A trait fitted by hand: varieties worth 0, 1, 2, 3, fruits a standard deviation of 2 apart; `apart` where not told. */
function found(
  trait: TraitId,
  {
    apart = {},
    fitted = true,
    swings = {},
  }: {
    apart?: Readonly<Record<string, VarietyNumbers['apart']>>;
    fitted?: boolean;
    swings?: Readonly<Record<string, number>>;
  } = {},
): TraitFound {
  const spread = new Float64Array(DRAWS).fill(2);
  const worth = ALL.map((level, at) => drawn(level, () => at));
  const fit: TraitFit = {
    lasting: worth,
    worth,
    level: worth,
    seasons: [],
    // What a summer added, up and down in turn.
    summers: ALL.flatMap((level) =>
      YEARS.map((year, at) => drawn(`${level} ${year}`, () => (at % 2 === 0 ? 1 : -1) * (swings[level] ?? 1))),
    ),
    sd: { residual: spread, variety: spread, variety_season: spread, mound: null, day: null },
  };
  const varieties = ALL.map(
    (variety): VarietyNumbers => ({
      variety,
      n: 5,
      mounds: 5,
      seasons: YEARS,
      without: null,
      level: null,
      difference: null,
      apart: apart[variety] ?? (variety === 'amber' ? 'yardstick' : null),
      better: null,
      best: null,
      plain: null,
    }),
  );
  return {
    fit: fitted ? fit : null,
    numbers: { trait, cannot: null, varieties, seasons: [], spread: null, cv_of_100: null, comparisons: 3 },
  };
}

const grown = (trait: TraitId, years: Readonly<Record<string, number>>): TraitValue[] =>
  Object.entries(years).flatMap(([variety, count]) =>
    YEARS.slice(0, count).map((year) => value(trait, variety, year, 'S1', 5)),
  );

const first = (part: ScorePart | undefined): (readonly [string, number])[] =>
  (part?.worth ?? []).map(({ level, draws }) => [level, draws[0] ?? Number.NaN] as const);

test('each wish in what one fruit differs from the next; of days, fewer is worth more', () => {
  const parts = scoreParts([found('brix'), found('first_ripe_days')], []);
  expect(parts.map(({ key, trait }) => `${key} ${trait}`)).toEqual(['sweet brix', 'early first_ripe_days']);
  expect(first(parts[0])).toEqual([
    ['amber', 0],
    ['birch', 0.5],
    ['copper', 1],
    ['dusk', 1.5],
  ]);
  expect(first(parts[1]).map(([, own]) => own)).toEqual([-0, -0.5, -1, -1.5]);
});

test('the best trait that tells of two varieties speaks for a wish', () => {
  const traits = (told: readonly TraitFound[]): string[] =>
    scoreParts(told, []).map(({ key, trait }) => `${key} ${trait}`);
  expect(traits([found('brix'), found('sweet')])).toEqual(['sweet brix']);
  expect(traits([found('brix', { fitted: false }), found('sweet')])).toEqual(['sweet sweet']);
  const unmeasured = {
    birch: 'yardstick-unmeasured',
    copper: 'yardstick-unmeasured',
    dusk: 'yardstick-unmeasured',
  } as const;
  expect(traits([found('brix', { apart: unmeasured }), found('sweet')])).toEqual(['sweet sweet']);
  expect(traits([found('brix', { apart: unmeasured })])).toEqual([]);
  expect(traits([found('sound_kg_per_plant')])).toEqual(['plenty sound_kg_per_plant']);
});

test('told are those held against the yardstick, and itself', () => {
  const [part] = scoreParts([found('brix', { apart: { birch: 'few-values', copper: 'never-joined' } })], []);
  expect(part?.told).toEqual(['amber', 'dusk']);
});

test('the seasons of a part are those of its trait', () => {
  const [part] = scoreParts(
    [found('brix')],
    [...grown('brix', { amber: 2, birch: 1 }), ...grown('mass_kg', { amber: 5 })],
  );
  expect(part?.seasons.get('amber')).toEqual(['2021', '2022']);
  expect(part?.seasons.get('birch')).toEqual(['2021']);
  expect(part?.seasons.get('copper')).toBeUndefined();
});

test('how even from summer to summer is told after four summers, by the spread of what they added', () => {
  const swings = { amber: 1, birch: 4, copper: 0, dusk: 9 };
  const years = { amber: 4, birch: 4, copper: 3, dusk: 3 };
  const parts = scoreParts([found('sound_kg_per_plant', { swings })], grown('sound_kg_per_plant', years));
  const even = parts.find(({ key }) => key === 'reliable');
  expect(even?.told).toEqual(['amber', 'birch']);
  // Two ups and two downs of 1: standard deviation √(4/3), over a fruit's 2. Of 4, four times as much; the others the mean.
  const one = Math.sqrt(4 / 3) / 2;
  expect(first(even).map(([level]) => level)).toEqual(ALL);
  expect(first(even).map(([, own]) => own)).toEqual(
    [-one, -4 * one, -2.5 * one, -2.5 * one].map((own) => expect.closeTo(own, 12)),
  );
});

test('one never grown is no more even than the others: nothing is known of it', () => {
  const years = { amber: 4, birch: 4 };
  const values = grown('sound_kg_per_plant', years);
  const even = scoreParts([found('sound_kg_per_plant', { swings: { amber: 1, birch: 4 } })], values).find(
    ({ key }) => key === 'reliable',
  );
  const scores = scoreOf(even ? [even] : [], { reliable: 1 }, ALL);
  const one = Math.sqrt(4 / 3) / 2;
  expect(scores.find(({ level }) => level === 'dusk')?.draws[0]).toBeCloseTo(-2.5 * one, 12);
});

test('with fewer than two of four summers nothing is said of how even they are', () => {
  const values = grown('sound_kg_per_plant', { amber: 4, birch: 3 });
  expect(scoreParts([found('sound_kg_per_plant')], values).map(({ key }) => key)).toEqual(['plenty']);
});

test('the score is the weighted mean of the wishes that weigh, draw by draw', () => {
  const parts = [
    partOf('sweet', [drawn('amber', (draw) => draw), drawn('birch', () => 1)]),
    partOf('plenty', [drawn('amber', () => 4), drawn('birch', () => -2)], { trait: 'sound_kg_per_plant' }),
    partOf('big', [drawn('amber', () => 1e6), drawn('birch', () => 0)], { trait: 'mass_kg' }),
  ];
  const [amber, birch, copper] = scoreOf(parts, { sweet: 1, plenty: 3, big: 0 }, ['amber', 'birch', 'copper']);
  expect([...(amber?.draws ?? [])].slice(0, 3)).toEqual([3, 3.25, 3.5]);
  expect(birch?.draws[7]).toBe(-1.25);
  expect(copper?.draws[0]).toBe(0);
});
