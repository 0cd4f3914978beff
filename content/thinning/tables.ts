import { column, type Table } from '../../src/book/table.ts';
import type { CropLoad } from './load.ts';
import { FATES, type SeasonCounts } from './season-counts.ts';

export const loadTable = (loads: readonly CropLoad[], id = 'thinning-load'): Table => ({
  id,
  title: 'Fruits kept a plant, and their mean mass, by spot',
  columns: [
    column('season', 'Season'),
    column('crop', 'Crop'),
    column('planting', 'Planting'),
    column('spot', 'Spot'),
    column('variety', 'Variety'),
    column('plants_set', 'Plants set', 'plants'),
    column('fruits_kept', 'Fruits kept', 'fruits'),
    column('kept_per_plant', 'Kept a plant', 'fruits_per_plant'),
    column('weighed', 'Weighed', 'fruits'),
    column('mean_kg', 'Mean mass', 'kg'),
  ],
  rows: loads.flatMap(({ slug, crop, rows }) =>
    rows.map(({ planting, spot, variety, plants, fruits, kept, mean_kg }) => [
      slug,
      crop,
      planting,
      spot,
      variety,
      plants,
      fruits,
      kept.value,
      mean_kg.n,
      mean_kg.value,
    ]),
  ),
});

export const countsTable = (counts: readonly SeasonCounts[]): Table => ({
  id: 'thinning-fates',
  title: 'What became of the fruits in the register',
  columns: [
    column('season', 'Season'),
    column('fruits', 'Fruits', 'fruits'),
    ...FATES.map((fate) => column(fate, fate, 'fruits')),
  ],
  rows: counts.map(({ slug, fruits, fates }) => [slug, fruits.value, ...fates.map(({ figure }) => figure.value)]),
});
