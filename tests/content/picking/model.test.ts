import { expect, test } from 'vitest';
import type { CropModel } from '../../../content/picking/crop-model.ts';
import type { SeasonShares } from '../../../content/picking/shares.ts';
import type { Page } from '../../../src/book/page.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { linkTexts, textsIn } from '../../reading/garden-texts.ts';
import { type Kept, keptGarden, SEVEN } from './kept-garden.ts';

const reference = loadReference('data/reference');

function pageOf(texts: Readonly<Record<string, string>>): Page {
  const { garden, problems } = linkTexts(texts);
  if (!garden || problems.some(({ severity }) => severity === 'error'))
    throw new Error(`invalid test garden: ${JSON.stringify(problems)}`);
  const page = bookOf({ reference }, garden, null).pages.find(({ path }) => path === 'picking/');
  if (!page) throw new Error('there is no page');
  return page;
}

interface Model {
  readonly crops: readonly CropModel[];
  readonly kept: number;
  readonly ended_sound: number;
  readonly shares: SeasonShares | null;
}
const modelOf = (...of: Parameters<typeof keptGarden>): Model => pageOf(keptGarden(...of)).model as Model;

function stillSoundOf(kept: readonly Kept[]): CropModel['still_sound'] {
  const [crop] = modelOf(kept).crops;
  if (!crop) throw new Error('no crop');
  return crop.still_sound;
}

test('counts of those still known: eaten sound before the day stands in neither number', () => {
  // After 7: all but the one eaten at 3, none gone: 6 of 6, the one given away on the day itself among them.
  // After 14: 20, 25 and 30 are sound, 8 and 14 gone: 3 of 5. After 21: 25 and 30 of four.
  expect(stillSoundOf(SEVEN).map(({ after_days, sound, watched }) => [after_days, sound.value, watched])).toEqual([
    [7, 6, 6],
    [14, 3, 5],
    [21, 2, 4],
  ]);
  expect(modelOf(SEVEN)).toMatchObject({ kept: 7, ended_sound: 4 });
});

test('no share of ten under ten fruits with both days known', () => {
  const few = [...SEVEN, [10, 1, 'rotted'], [10, 40, 'rotted']] as const;
  expect(stillSoundOf(few).map(({ of_ten, seeds }) => [of_ten.value, of_ten.reason?.code, seeds])).toEqual([
    [null, 'few-kept', null],
    [null, 'few-kept', null],
    [null, 'few-kept', null],
  ]);
});

test('of ten by the product limit, the eaten and the given away cut off', () => {
  // One more rotten after a day, one after 40 and one eaten sound at 10. At risk: 10 on day 1, 7 on day 8, 5 on day 14.
  const ten = [...SEVEN, [10, 1, 'rotted'], [10, 40, 'rotted'], [10, 10, 'eaten-sound']] as const;
  // 9/10 after 7; times 6/7 by day 8, times 4/5 by day 14: 0.617 after 14 and after 21, for nothing went off between.
  const values = stillSoundOf(ten).map(({ of_ten }) => of_ten.value ?? Number.NaN);
  expect(values[0]).toBeCloseTo(9, 12);
  expect(values[1]).toBeCloseTo((10 * 9 * 6 * 4) / (10 * 7 * 5), 12);
  expect(values[2]).toBeCloseTo(values[1] ?? 0, 12);
  expect(stillSoundOf(ten).map(({ seeds }) => seeds)).toEqual([
    { filled: 9, exact: true },
    { filled: 6, exact: false },
    { filled: 6, exact: false },
  ]);
});

test('nothing is told of a day no sound fruit was watched to, but all gone is told', () => {
  const eaten: readonly Kept[] = [
    [10, 2, 'rotted'],
    [10, 5, 'eaten-sound'],
  ];
  expect(stillSoundOf(eaten)[0]?.sound).toMatchObject({ value: null, reason: { code: 'none-kept-so-long' } });
  const gone: readonly Kept[] = [
    [10, 2, 'rotted'],
    [10, 5, 'eaten-soft'],
  ];
  expect(stillSoundOf(gone)[0]?.sound).toMatchObject({ value: 0, n: 2, reason: null });
});

test('where they lay, the place with most first, a place nobody told too', () => {
  const [crop] = modelOf(SEVEN).crops;
  expect(
    crop?.places.map(({ place, fruits, endings, days }) => [place, fruits, endings.map(({ count }) => count), days]),
  ).toEqual([
    // Eaten sound, given away, eaten soft, rotted.
    ['cellar', 3, [2, 0, 0, 1], { least: 20, most: 30 }],
    ['kitchen', 2, [1, 0, 1, 0], { least: 3, most: 14 }],
    [null, 1, [0, 1, 0, 0], { least: 7, most: 7 }],
    ['shed', 1, [0, 0, 0, 1], { least: 8, most: 8 }],
  ]);
});

test('a fruit picked some day in August has no days, and is counted all the same', () => {
  const texts = keptGarden([[10, 9, 'eaten-sound']]);
  const vague = {
    ...texts,
    'seasons/2025/fruits.yaml': '- {id: F0, planting: P1, fate: picked, pick: {picked_on: 2025-08}}\n',
  };
  const model = pageOf(vague).model as Model;
  expect([model.kept, model.crops[0]?.still_sound, model.crops[0]?.places[0]?.days]).toEqual([1, [], null]);
});

test('shares by where they went, and what was not counted or weighed told beside the sum', () => {
  const { shares } = modelOf([], {
    shares: `- {shared_on: 2025-08-10, to: neighbours, fruits: 2, mass_kg: 5.5}
- {shared_on: 2025-08-12, to: food-bank, fruits: 3}
- {shared_on: 2025-08-20, to: neighbours, fruits: about 2, mass_lb: 10}
- {shared_on: 2025-08-21, to: stall, mass_kg: 1}
`,
  });
  const told = ({ value, reason }: { value: number | null; reason: { code: string } | null }) => [value, reason?.code];
  expect(shares?.lines.map(({ to, fruits, kg }) => [to, ...told(fruits), told(kg)[1]])).toEqual([
    ['neighbours', 4, 'about', undefined],
    ['food-bank', 3, undefined, 'none-weighed'],
    ['stall', null, 'shares-uncounted', undefined],
    [null, 7, 'at-least', 'at-least'],
  ]);
  // 10 lb are 4.5359237 kg by definition.
  expect(shares?.lines[0]?.kg.value).toBeCloseTo(10.0359237, 9);
});

test('the level of record grows from what came off to how it ended to where it lay', () => {
  const level = (kept: readonly Kept[]) => pageOf(keptGarden(kept)).level?.kept;
  expect(level([])).toBeNull();
  expect(
    pageOf({ ...keptGarden([]), 'seasons/2025/pickings.yaml': '- {planting: P1, picked_on: 2025-08, count: 4}\n' })
      .level?.kept,
  ).toBe('little');
  expect(level([[10, 4, 'rotted']])).toBe('some');
  expect(level(SEVEN)).toBe('full');
});

test('six cautions at the most, those of split fruit, of lifting and of cut fruit among them', () => {
  const { cautions } = pageOf(textsIn('tests/books/gardens/day-zero'));
  expect(cautions.length).toBeLessThanOrEqual(6);
  for (const id of ['wasps', 'lifting', 'cut-fruit', 'sharing-whole']) expect(cautions).toContain(id);
});
