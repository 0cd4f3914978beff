import { column, type Table } from '../../src/book/table.ts';
import type { CropNeed } from './crop-need.ts';

export const needTable = (crops: readonly CropNeed[]): Table => ({
  id: 'water-need',
  title: 'Water at full leaf by month, rain not taken off',
  columns: [
    column('crop', 'Crop'),
    column('month', 'Month'),
    column('area_m2', 'Ground', 'm2'),
    column('eto_mm_per_day', 'Thirst of the air', 'mm_per_day'),
    column('need_l_per_week', 'Need a week', 'l'),
    column('need_cans_per_week', 'Cans a week', 'cans'),
    column('rain_l_per_week', 'Usual rain a week', 'l'),
    column('years', 'Years read', 'years'),
  ],
  rows: crops.flatMap(({ id, ground, months }) =>
    months.map(({ month, eto, l_per_week, cans_per_week, rain_l_per_week }) => [
      id,
      month,
      ground.area_m2,
      eto.value,
      l_per_week.value,
      cans_per_week.value,
      rain_l_per_week.value,
      eto.n,
    ]),
  ),
});
