import { column, type Table } from '../../src/book/table.ts';
import type { SavedLot } from './saved-lot.ts';
import type { SeedVariety } from './seed-variety.ts';

export const varietiesTable = (varieties: readonly SeedVariety[]): Table => ({
  id: 'seed-varieties',
  title: 'Varieties whose seed may be kept',
  columns: [
    column('variety', 'Variety'),
    column('seed', 'Seed'),
    column('beside', 'Others of its kind here'),
    column('flowers_closed', 'Flowers closed for seed'),
    column('plants_set', 'Plants set', 'plants'),
    column('parents_low', 'Plants to save from, least', 'plants'),
    column('parents_high', 'Plants to save from, most', 'plants'),
    column('worth', 'Worth keeping'),
  ],
  rows: varieties.map(({ id, seed, beside, closed, plants, parents, worth }) => [
    id,
    seed,
    beside.join(', '),
    closed,
    plants.value,
    parents?.low ?? null,
    parents?.high ?? null,
    worth,
  ]),
});

export const lotsTable = (lots: readonly SavedLot[]): Table => ({
  id: 'seed-saved-lots',
  title: 'Seed saved here',
  columns: [
    column('lot', 'Seed lot'),
    column('variety', 'Variety'),
    column('year', 'Year of harvest'),
    column('parents', 'Plants it was saved from', 'plants'),
    column('seeds_tested', 'Seeds tested', 'seeds'),
    column('came_up', 'Came up', 'seeds'),
    column('good_until_low', 'Good until, least'),
    column('good_until_high', 'Good until, most'),
  ],
  rows: lots.map(({ id, variety, year, parents, sown, came_up, until }) => [
    id,
    variety,
    year,
    parents,
    sown,
    came_up.value,
    until?.low ?? null,
    until?.high ?? null,
  ]),
});
