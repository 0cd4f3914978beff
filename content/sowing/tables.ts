import { column, type Table } from '../../src/book/table.ts';
import type { CropModel } from './crop-model.ts';
import type { SeedLine } from './seed-lines.ts';

export const seedsTable = (lines: readonly SeedLine[]): Table => ({
  id: 'sowing-seeds',
  title: 'Seeds to sow for a 9-in-10 chance of the plants wanted',
  columns: [
    column('variety', 'Variety'),
    column('lot', 'Seed lot'),
    column('seeds_counted', 'Seeds counted'),
    column('came_up', 'Came up'),
    column('plants_wanted', 'Plants wanted', 'plants'),
    column('seeds', 'Seeds to sow', 'seeds'),
  ],
  rows: lines.flatMap(({ variety, lot, test, seeds }) =>
    seeds.map(({ wanted, figure }) => [variety, lot, test?.sown ?? null, test?.came_up ?? null, wanted, figure.value]),
  ),
});

export const emergenceTable = (crops: readonly CropModel[]): Table => ({
  id: 'sowing-emergence',
  title: 'Days to come up by the warmth of the soil',
  columns: [column('crop', 'Crop'), column('soil_c', 'Soil', 'c'), column('days', 'Days to come up', 'days')],
  rows: crops.flatMap(({ crop, emergence }) => emergence.map(({ soil_c, days }) => [crop.id, soil_c, days])),
});
