import { expect, test } from 'vitest';
import type { CropModel } from '../../../content/thinning/crop-model.ts';
import type { LateLine } from '../../../content/thinning/late-lines.ts';
import type { CropLoad } from '../../../content/thinning/load.ts';
import type { SeasonCounts } from '../../../content/thinning/season-counts.ts';
import { textsIn } from '../../reading/garden-texts.ts';
import { ended, KEEP, loadedGarden, pageOf, picked, RIPE, SIX, YOUNG } from './loaded-garden.ts';

interface Model {
  readonly crops: readonly CropModel[];
  readonly late: readonly LateLine[];
  readonly loads: readonly CropLoad[];
  readonly counts: readonly SeasonCounts[];
  readonly fates: readonly { readonly fate: string }[];
}
const modelOf = (...of: Parameters<typeof loadedGarden>): Model => pageOf(loadedGarden(...of)).model as Model;

test('a plant carried what was neither thinned nor dropped young; the mean is of fruit on the scale', () => {
  const { loads } = modelOf(`${SIX}${picked('G', 'P2', 'mass_kg: 9')}`);
  // P1: A, B, C and D on two plants, 10 kg over two weighed; P2: one on two. Together 5 on 4 plants, 19 kg over three.
  expect(
    loads[0]?.rows.map(({ planting, fruits, kept, mean_kg }) => [planting, fruits, kept.value, mean_kg.value]),
  ).toEqual([
    ['P1', 4, 2, 5],
    ['P2', 1, 0.5, 9],
  ]);
  expect(loads[0]?.rows.map(({ mean_kg }) => [mean_kg.reason?.code, mean_kg.n])).toEqual([
    ['mean-of-some', 2],
    [undefined, 1],
  ]);
  expect([loads[0]?.plants, loads[0]?.kept.n, loads[0]?.kept.value]).toEqual([4, 5, 1.25]);
  expect(loads[0]?.mean_kg.value).toBeCloseTo(19 / 3, 12);
});

test('nothing weighed is no mass, and says why', () => {
  expect(modelOf(picked('A', 'P1', null)).loads[0]?.mean_kg).toMatchObject({
    value: null,
    reason: { code: 'none-weighed' },
  });
});

test('a register that misses fruit the pickings count tells of no plant', () => {
  const pickings = '- {planting: P1, picked_on: 2025-09, count: 5}\n';
  expect(modelOf(SIX, { pickings }).loads).toEqual([]);
  expect(modelOf(`${SIX}${picked('G', 'P2', null)}`, { pickings }).loads[0]?.rows).toMatchObject([{ planting: 'P2' }]);
});

test('a crop eaten young carries no load and has no last set', () => {
  const { loads, late, crops } = modelOf(SIX, { globe: KEEP + RIPE + YOUNG });
  expect([loads, late, crops[0]?.young]).toEqual([[], [], true]);
});

test('the last set is so many days before the season ends, on the books of both halves of the earth', () => {
  // 31 October less 45 days: 31 days take it to 30 September, 14 more to 16 September.
  expect(modelOf('').late).toMatchObject([{ names: null, last_set: { on: '2025-09-16', days: { value: 45 } } }]);
  // 10 April less 45 days: 10 to 31 March, 31 to 28 February, 4 more to 24 February.
  const { late } = pageOf(textsIn('tests/books/gardens/southern')).model as Model;
  expect(late.map(({ last_set }) => last_set.on)).toEqual(['2026-02-24']);
});

test('crops of one day stand together, those of another apart, and one without days is left out', () => {
  const told = (bell: string) => modelOf('', { bell }).late.map(({ names, last_set }) => [names, last_set.on]);
  expect(told(RIPE)).toEqual([[null, '2025-09-16']]);
  expect(told(RIPE.replace('45', '50'))).toEqual([
    [['bells'], '2025-09-11'],
    [['globes'], '2025-09-16'],
  ]);
  expect(told('')).toEqual([[['globes'], '2025-09-16']]);
});

test('what became of the fruits, in seasons where somebody wrote down one thinned or dropped', () => {
  const { counts, fates } = modelOf(SIX, { earlier: picked('A', 'P1', null, '2024-09-01') });
  expect(counts.map(({ label, fruits }) => [label, fruits.value])).toEqual([['2025', 6]]);
  expect(counts[0]?.fates.map(({ fate, figure }) => [fate, figure.value])).toEqual([
    ['picked', 3],
    ['thinned', 1],
    ['aborted', 1],
    ['lost', 1],
    ['left', 0],
    ['growing', 0],
  ]);
  // A column of noughts is not printed.
  expect(fates.map(({ fate }) => fate)).toEqual(['picked', 'thinned', 'aborted', 'lost']);
});

test('a chart from three weighed spots on, in the book of a community alone', () => {
  const weighed = (ids: readonly string[]): string => ids.map((id) => picked(`F${id}`, id, 'mass_kg: 4')).join('');
  const charts = (...of: Parameters<typeof loadedGarden>): number => pageOf(loadedGarden(...of)).charts.length;
  expect(charts(weighed(['P1', 'P2', 'P3']))).toBe(1);
  expect(charts(weighed(['P1', 'P2']))).toBe(0);
  expect(charts(`${weighed(['P1', 'P2'])}${picked('X', 'P3', null)}`)).toBe(0);
  expect(charts(weighed(['P1', 'P2', 'P3']), { edition: 'home' })).toBe(0);
});

test('the level of record grows from the harvest to fruit taken off to the scale', () => {
  const level = (fruits: string) => pageOf(loadedGarden(fruits)).level?.kept;
  const plain = picked('A', 'P1', null);
  const thinned = `${plain}${ended('E', 'P1', 'thinned')}`;
  expect([level(''), level(plain), level(thinned), level(`${thinned}${picked('B', 'P1', 'mass_kg: 4')}`)]).toEqual([
    null,
    'little',
    'some',
    'full',
  ]);
});

test('the knife is warned of, for a fruit is cut', () => {
  expect(pageOf(loadedGarden('')).cautions).toEqual(['knife']);
});
