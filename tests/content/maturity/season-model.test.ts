import { expect, test } from 'vitest';
import type { SeasonModel } from '../../../content/maturity/season-model.ts';
import { loadReference } from '../../../src/cli/load-reference.ts';
import { bookOf } from '../../../src/cli/make-book.ts';
import { planting, smallGarden } from '../../ledger/small-garden.ts';

const reference = loadReference('data/reference');

const fruit = (id: string, of: string, set: string, picked: string): string =>
  `- {id: ${id}, planting: ${of}, fate: picked, set: {set_on: ${set}}, pick: {picked_on: ${picked}, reason: ripe}}\n`;

function crop(fruits: readonly string[], pickings = '') {
  const plantings = `${planting('P1', 'S1')}${planting('P2', 'S2').replace('amber', 'birch')}`;
  const garden = smallGarden({ plantings, fruits: fruits.join(''), pickings });
  const page = bookOf({ reference }, garden, null).pages.find(({ path }) => path === 'maturity/');
  const model = page?.model as { season: SeasonModel | null } | undefined;
  const [only] = model?.season?.crops ?? [];
  if (!only) throw new Error('no crop');
  return only;
}

test('the soonest and the latest variety by the middle of set to ripe, when they differ', () => {
  const amber = fruit('A', 'P1', '2025-07-01', '2025-08-10');
  const model = crop([amber, fruit('B', 'P2', '2025-07-01', '2025-08-01')]);
  expect([model.soonest?.name, model.latest?.name]).toEqual(['Birch', 'Amber']);
  expect(model.soonest?.from_set?.middle.value).toBe(31);
  const same = crop([amber, fruit('B', 'P2', '2025-07-02', '2025-08-11')]);
  expect([same.soonest?.from_set?.middle.value, same.latest]).toEqual([40, null]);
});

test('a variety with pickings alone keeps its first and last day and has no middle', () => {
  const picked = ['2025-08-09', '2025-08-30'].map((on) => `- {planting: P2, picked_on: ${on}, count: 2}\n`).join('');
  const model = crop([fruit('A', 'P1', '2025-07-01', '2025-08-10')], picked);
  const birch = model.rows.find(({ name }) => name === 'Birch');
  expect(birch).toMatchObject({ ripened: null, from_set: null, first_pick_days: { value: 81 } });
  expect([birch?.first_picked_on?.first, birch?.last_picked_on?.last]).toEqual(['2025-08-09', '2025-08-30']);
});

test('a variety that never ripened has no row', () => {
  const lost = '- {id: B, planting: P2, fate: lost, set: {set_on: 2025-07-01}, end: {ended_on: 2025-08-01}}\n';
  const model = crop([fruit('A', 'P1', '2025-07-01', '2025-08-10'), lost]);
  expect(model.rows.map(({ name }) => name)).toEqual(['Amber']);
});
