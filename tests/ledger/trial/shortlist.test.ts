import { expect, test } from 'vitest';
import type { ScorePart } from '../../../src/ledger/trial/score.ts';
import { type ListEntry, shortlist } from '../../../src/ledger/trial/shortlist.ts';
import type { Weights } from '../../../src/ledger/trial/weight.ts';
import { aboveIn, DRAWS, drawn, partOf } from './drawn.ts';

const listOf = (
  parts: readonly ScorePart[],
  weights: Weights = { sweet: 1 },
  varieties = parts[0]?.worth.map(({ level }) => level) ?? [],
): ListEntry[] => shortlist({ parts, varieties, yardstick: 'amber' }, weights);

const standings = (list: readonly ListEntry[]): Record<string, string> =>
  Object.fromEntries(list.map(({ variety, standing }) => [variety, standing]));

const still = (level: string, at: number) => drawn(level, () => at);

test('fewer than five: all but those that go, with their chance and no best three', () => {
  const worth = [still('amber', 0), aboveIn('birch', 1), aboveIn('copper', 2), aboveIn('dusk', 20)];
  const list = listOf([partOf('sweet', worth)]);
  // Below 2 of 20 it goes, at 2 of 20 it stays.
  expect(standings(list)).toEqual({ amber: 'listed', birch: 'goes', copper: 'listed', dusk: 'listed' });
  expect(list.map(({ better }) => better)).toEqual([null, 0.05, 0.1, 1]);
  expect(list.map(({ best }) => best)).toEqual([null, null, null, null]);
});

test('nothing goes before the third season beside the yardstick', () => {
  const worth = [still('amber', 0), aboveIn('birch', 0)];
  const goes = (seasons: readonly string[]) => {
    const [, birch] = listOf([partOf('sweet', worth, { seasons })]);
    return `${birch?.standing} ${birch?.seasons}`;
  };
  expect(goes(['2025'])).toBe('listed 1');
  expect(goes(['2024', '2025'])).toBe('listed 2');
  expect(goes(['2023', '2024', '2025'])).toBe('goes 3');
});

test('five and more: the best three, and no more where a fourth is behind', () => {
  const six = [
    still('amber', 0),
    still('birch', 1),
    still('copper', 2),
    still('dusk', 3),
    still('ember', -1),
    still('flint', 0.5),
  ];
  const list = listOf([partOf('sweet', six)]);
  expect(standings(list)).toEqual({
    amber: 'again',
    birch: 'listed',
    copper: 'listed',
    dusk: 'listed',
    ember: 'goes',
    flint: 'again',
  });
  expect(list.map(({ best }) => best)).toEqual([0, 1, 1, 1, 0, 0]);
  // One of five that goes is never listed as the third, be the others ever so bad.
  const five = [still('amber', 3), ...['birch', 'copper', 'dusk', 'ember'].map((name, at) => still(name, -at))];
  expect(standings(listOf([partOf('sweet', five)]))).toMatchObject({ amber: 'listed', birch: 'goes', copper: 'goes' });
});

test('a fourth as even as the third is listed too; one below an even chance is not', () => {
  const sharing = (third: number): ScorePart => {
    const flips = (name: string, when: (draw: number) => boolean) => drawn(name, (draw) => (when(draw) ? 2 : 1));
    return partOf('sweet', [
      still('amber', 5),
      still('birch', 6),
      flips('copper', (draw) => draw < third),
      flips('dusk', (draw) => draw >= third),
      still('ember', 0),
    ]);
  };
  const listed = (part: ScorePart): string[] =>
    shortlist({ parts: [part], varieties: part.told, yardstick: 'ember' }, { sweet: 1 })
      .filter(({ standing }) => standing === 'listed')
      .map(({ variety }) => variety);
  expect(listed(sharing(10))).toEqual(['amber', 'birch', 'copper', 'dusk']);
  expect(listed(sharing(12))).toEqual(['amber', 'birch', 'copper']);
  expect(listed(sharing(8))).toEqual(['amber', 'birch', 'dusk']);
});

test('a fourth behind the third is listed while its chance is even or more', () => {
  // Birch is out in 4 draws, copper in 7, dusk in 9.
  const out = (name: string, from: number, to: number) => drawn(name, (draw) => (draw >= from && draw < to ? 1 : 2));
  const worth = [
    out('birch', 0, 4),
    out('copper', 4, 11),
    out('dusk', 11, DRAWS),
    still('ember', 0),
    still('amber', 5),
  ];
  // Amber, far ahead, makes the others go after three seasons; after one nothing goes.
  const list = listOf([partOf('sweet', worth)]);
  expect(list.map(({ best }) => best)).toEqual([0.8, 0.65, 0.55, 0, 1]);
  expect(standings(listOf([partOf('sweet', worth, { seasons: ['2025'] })]))).toEqual({
    birch: 'listed',
    copper: 'listed',
    dusk: 'listed',
    ember: 'again',
    amber: 'listed',
  });
});

test('where the third is below an even chance it is listed all the same', () => {
  // Copper is third in 8 draws, dusk in 7, ember in 5.
  const turns = (name: string, from: number, to: number) => drawn(name, (draw) => (draw >= from && draw < to ? 2 : 1));
  const worth = [
    still('amber', 5),
    still('birch', 6),
    turns('copper', 0, 8),
    turns('dusk', 8, 15),
    turns('ember', 15, DRAWS),
  ];
  const list = listOf([partOf('sweet', worth)]);
  expect(list.map(({ best }) => best)).toEqual([1, 1, 0.4, 0.35, 0.25]);
  expect(list.filter(({ best }) => (best ?? 0) >= 0.4).map(({ variety }) => variety)).toEqual([
    'amber',
    'birch',
    'copper',
  ]);
  expect(standings(listOf([partOf('sweet', worth, { seasons: ['2025'] })]))).toEqual({
    amber: 'listed',
    birch: 'listed',
    copper: 'listed',
    dusk: 'again',
    ember: 'again',
  });
});

test('less than half of the wishes known of a variety: too little to place it', () => {
  const worth = [still('amber', 0), still('birch', 1), still('copper', 1)];
  const sweet = partOf('sweet', worth, { told: ['amber', 'birch'] });
  const plenty = partOf('plenty', worth, { trait: 'sound_kg_per_plant', told: ['amber', 'copper'] });
  const [, birch, copper] = listOf([sweet, plenty], { sweet: 1, plenty: 2 });
  expect(birch).toEqual({ variety: 'birch', standing: 'few', better: null, best: null, seasons: 3 });
  expect(copper?.standing).toBe('listed');
  expect(standings(listOf([sweet, plenty], { sweet: 1, plenty: 1 }))).toMatchObject({
    birch: 'listed',
    copper: 'listed',
  });
});

test('a yardstick of which too little is known, or nobody to set beside it: few of all', () => {
  const worth = [still('amber', 0), still('birch', 1), still('copper', 1)];
  expect(standings(listOf([partOf('sweet', worth, { told: ['birch', 'copper'] })]))).toEqual({
    amber: 'few',
    birch: 'few',
    copper: 'few',
  });
  expect(standings(listOf([partOf('sweet', worth, { told: ['amber'] })]))).toMatchObject({
    amber: 'few',
    birch: 'few',
  });
});

test('a wish that weighs nothing has no say; without a wish there is no list', () => {
  const sweet = partOf('sweet', [still('amber', 0), aboveIn('birch', 20)]);
  const plenty = partOf('plenty', [still('amber', 0), aboveIn('birch', 0)], { trait: 'sound_kg_per_plant' });
  expect(listOf([sweet, plenty], { sweet: 1, plenty: 0 })[1]).toMatchObject({ better: 1, standing: 'listed' });
  expect(listOf([sweet, plenty], { plenty: 3 })[1]).toMatchObject({ better: 0, standing: 'goes' });
  expect(listOf([sweet, plenty], { sweet: 0, big: 2 })).toEqual([]);
  expect(listOf([], { sweet: 1 }, ['amber', 'birch'])).toEqual([]);
});

test('a wish of twice the weight counts twice', () => {
  // Worth 1 for sugar and -1.5 for plenty: ahead at weights 2 to 1, behind at 1 to 1.
  const sweet = partOf('sweet', [still('amber', 0), still('birch', 1)]);
  const plenty = partOf('plenty', [still('amber', 0), still('birch', -1.5)], { trait: 'sound_kg_per_plant' });
  expect(listOf([sweet, plenty], { sweet: 2, plenty: 1 })[1]?.better).toBe(1);
  expect(listOf([sweet, plenty], { sweet: 1, plenty: 1 })[1]?.better).toBe(0);
});

test('shared seasons are those in which both told of half of the wishes, not of anything', () => {
  const worth = [still('amber', 0), aboveIn('birch', 0)];
  const sweet = partOf('sweet', worth, { seasons: ['2025'] });
  const plenty = partOf('plenty', worth, { trait: 'sound_kg_per_plant' });
  const big = partOf('big', worth, { trait: 'mass_kg', seasons: ['2021', '2022', '2023', '2024', '2025'] });
  const shared = (weights: Weights) => listOf([sweet, plenty, big], weights)[1]?.seasons;
  expect(shared({ sweet: 1 })).toBe(1);
  expect(shared({ sweet: 2, plenty: 1 })).toBe(1);
  expect(shared({ sweet: 1, plenty: 1 })).toBe(3);
  expect(shared({ sweet: 1, plenty: 1, big: 2 })).toBe(5);
  // Only seasons both stood in: birch missed two of the three.
  const seasons = new Map([...plenty.seasons, ['birch', ['2020', '2024']] as const]);
  expect(listOf([{ ...plenty, seasons }], { plenty: 1 })[1]?.seasons).toBe(1);
});
