import { expect, test } from 'vitest';
import type { TraitValue } from '../../../src/ledger/trial/trait-value.ts';
import { type TrialNumbers, trialNumbers } from '../../../src/ledger/trial/trial-numbers.ts';
import { USUAL_WEIGHTS, type Weights } from '../../../src/ledger/trial/weight.ts';
import { chanceOf } from '../../simulated/chance.ts';
import { normal } from '../../simulated/normal.ts';
import { shuffled } from '../../simulated/shuffled.ts';
import { value } from './trial-garden.ts';

const ALL = ['amber', 'birch', 'copper', 'dusk', 'ember', 'flint'];
const YEARS = ['2023', '2024', '2025'];

/** Three mounds a variety and season; sugar and mass by variety, scattered a little. */
function values(sugar: readonly number[], kg: readonly number[], years = YEARS): TraitValue[] {
  const chance = chanceOf(5);
  const scatter = (): number => 0.3 * normal(chance);
  return years.flatMap((year) =>
    ALL.flatMap((variety, at) =>
      [1, 2, 3].flatMap((spot) => [
        ...(sugar[at] === undefined
          ? []
          : [
              value('sweet', variety, year, `${variety}-${spot}`, sugar[at] + scatter(), {
                key: `${year} ${at} ${spot}`,
              }),
            ]),
        ...(kg[at] === undefined
          ? []
          : [value('sound_kg_per_plant', variety, year, `${variety}-${spot}`, kg[at] + scatter())]),
      ]),
    ),
  );
}

const told = (own: readonly TraitValue[], weights: Weights, varieties = ALL): TrialNumbers =>
  trialNumbers({ values: own, varieties, yardstick: 'amber', weights });

const listed = ({ list }: Pick<TrialNumbers, 'list'>): string[] =>
  list.filter(({ standing }) => standing === 'listed').map(({ variety }) => variety);

/** Sugar favours birch, copper and dusk; the crop ember, flint and dusk. */
const OPPOSED = values([10, 13, 13, 13, 7, 7], [5, 2, 2, 8, 8, 8]);

test('what one wish more or less would bring in and put out, and only changes that do', () => {
  const numbers = told(OPPOSED, { sweet: 2 });
  expect(listed(numbers)).toEqual(['birch', 'copper', 'dusk']);
  expect(numbers.wishes).toEqual([
    { key: 'sweet', trait: 'sweet', weight: 2 },
    { key: 'plenty', trait: 'sound_kg_per_plant', weight: 0 },
  ]);
  // Plenty at 1 beside sweet at 2 changes nothing, nor does sweet at 1 or 3 alone.
  expect(numbers.other_wishes).toEqual([]);
  const even = told(OPPOSED, { sweet: 1, plenty: 1 });
  const keys = even.other_wishes.map(({ key, change }) => `${key} ${change}`);
  expect(keys).toContain('plenty more');
  const more = even.other_wishes.find(({ key, change }) => key === 'plenty' && change === 'more');
  const then = told(OPPOSED, { sweet: 1, plenty: 2 });
  expect(more?.comes).toEqual(listed(then).filter((one) => !listed(even).includes(one)));
  expect(more?.leaves).toEqual(listed(even).filter((one) => !listed(then).includes(one)));
  expect(even.other_wishes.every(({ comes, leaves }) => comes.length + leaves.length > 0)).toBe(true);
});

test('a wish at its most is not raised, one at nothing not lowered, and the last wish not taken away', () => {
  // Third is ember by 10.5 kg, unless sugar weighs four times as much as plenty: then dusk by 3 steps.
  const close = values([10, 40, 40, 13, 10, 10], [10, 40, 40, 10, 20.5, 10]);
  const most = told(close, { sweet: 3, plenty: 1 });
  expect(listed(most)).toEqual(['birch', 'copper', 'ember']);
  expect(listed(told(close, { sweet: 4, plenty: 1 }))).toEqual(['birch', 'copper', 'dusk']);
  expect(most.other_wishes.some(({ key, change }) => key === 'sweet' && change === 'more')).toBe(false);
  const alone = told(OPPOSED, { sweet: 1 });
  expect(alone.other_wishes.filter(({ change }) => change === 'less')).toEqual([]);
});

test('the house’s weights count for wishes that the records tell, each alike', () => {
  const numbers = told(OPPOSED, USUAL_WEIGHTS);
  expect(numbers.wishes.map(({ key, weight }) => `${key} ${weight}`)).toEqual(['sweet 1', 'plenty 1']);
  expect(numbers.list).toEqual(told(OPPOSED, { sweet: 2, plenty: 2 }).list);
});

test('weights of nothing: traits are told, and no list, no next spot, no season left out', () => {
  for (const weights of [{}, { sweet: 0, plenty: 0 }, { big: 3 }]) {
    const numbers = told(OPPOSED, weights);
    expect(numbers.traits.map(({ trait }) => trait)).toEqual(['sweet', 'sound_kg_per_plant']);
    for (const part of ['list', 'other_wishes', 'half_pull', 'double_pull', 'next', 'held_out'] as const)
      expect(numbers[part]).toEqual([]);
  }
});

test('a variety told of less than half of the wishes is few, and the others are placed without it', () => {
  const numbers = told(values([10, 12, 13, 9, 11], [5, 6, 4, 7, 5, 3]), { sweet: 2, plenty: 1 });
  expect(numbers.list.map(({ standing }) => standing === 'few')).toEqual([false, false, false, false, false, true]);
  expect(numbers.list.at(-1)).toMatchObject({ variety: 'flint', better: null, best: null });
});

test('half and double pull tell of the same varieties; a close call moves with them, a plain one does not', () => {
  const plain = told(OPPOSED, { sweet: 1 });
  expect(listed({ list: plain.half_pull })).toEqual(listed(plain));
  expect(listed({ list: plain.double_pull })).toEqual(listed(plain));
  expect(plain.half_pull.map(({ variety }) => variety)).toEqual(ALL);
  const better = (list: TrialNumbers['list'], variety: string): number =>
    list.find((one) => one.variety === variety)?.better ?? Number.NaN;
  // One summer of three fruits each: what is likely beforehand weighs.
  const thin = told(values([10, 10.6, 9.4, 10, 10.3, 9.9], [], ['2025']), { sweet: 1 });
  expect(better(thin.half_pull, 'birch')).toBeLessThan(better(thin.double_pull, 'birch'));
});

test('next and seasons left out come with a list, by the wishes that weigh', () => {
  const numbers = told(OPPOSED, { plenty: 1 }, [...ALL, 'gorse']);
  expect(numbers.next[0]).toMatchObject({ variety: 'gorse', grown: false });
  expect(numbers.next).toHaveLength(7);
  expect(numbers.list).toHaveLength(6);
  expect(new Set(numbers.held_out.map(({ trait }) => trait))).toEqual(new Set(['sound_kg_per_plant']));
  expect(numbers.held_out).toHaveLength(15);
});

test('the same numbers in any order of the values, to the last bit', () => {
  const weights = { sweet: 2, plenty: 1, reliable: 1 };
  const four = values([10, 13, 12], [5, 2, 4], ['2022', ...YEARS]);
  const first = told(four, weights);
  expect(first.wishes.map(({ key }) => key)).toContain('reliable');
  for (const seed of [1, 2]) expect(told(shuffled(chanceOf(seed), four), weights)).toEqual(first);
});
