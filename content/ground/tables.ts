import { column, type Table } from '../../src/book/table.ts';
import type { Heaps } from './heaps.ts';
import type { ManureModel } from './manure.ts';
import type { Nitrogen } from './nitrogen.ts';
import type { RoomLine } from './room.ts';

export const roomTable = (lines: readonly RoomLine[], season: string): Table => ({
  id: 'ground-room',
  title: `Room that plants had in ${season}, and room as others give it`,
  columns: [
    column('crop', 'Crop'),
    column('spots', 'Spots'),
    column('area_m2', 'Area of each', 'm2'),
    column('plants', 'Plants set', 'plants'),
    column('fits_least', 'Room for at least', 'plants'),
    column('fits_most', 'Room for at most', 'plants'),
  ],
  rows: lines.map(({ crops, spots, share_m2, plants, fits }) => [
    crops,
    spots.join(' '),
    share_m2,
    plants,
    fits?.least ?? null,
    fits?.most ?? null,
  ]),
});

export const heapsTable = ({ lines }: Heaps): Table => ({
  id: 'ground-heaps',
  title: 'Loose earth that a heap takes',
  columns: [
    column('kind', 'Heap'),
    column('long_cm', 'Across or long', 'cm'),
    column('wide_cm', 'Wide', 'cm'),
    column('high_cm', 'High', 'cm'),
    column('volume_l', 'Earth', 'l'),
    column('barrows', 'Barrows', 'barrows'),
  ],
  rows: lines.map(({ kind, long_cm, wide_cm, high_cm, l, barrows }) => [
    kind,
    long_cm,
    wide_cm,
    high_cm,
    l.value,
    barrows.value,
  ]),
});

export const nitrogenTable = ({ crops, area_m2 }: Nitrogen): Table => ({
  id: 'ground-nitrogen',
  title: 'What gives a crop its nitrogen in the first year',
  columns: [
    column('crop', 'Crop'),
    column('area_m2', 'Area', 'm2'),
    column('material', 'Material'),
    column('mass_kg_least', 'Mass, least', 'kg'),
    column('mass_kg_most', 'Mass, most', 'kg'),
    column('volume_l_least', 'Volume, least', 'l'),
    column('volume_l_most', 'Volume, most', 'l'),
  ],
  rows: crops.flatMap(({ id, materials }) =>
    materials.map(({ id: material, kg, l }) => [
      id,
      area_m2,
      material,
      kg.low,
      kg.high,
      l?.low ?? null,
      l?.high ?? null,
    ]),
  ),
});

export const manureTable = ({ lines, season }: ManureModel): Table => ({
  id: 'ground-manure',
  title: `Raw and dried manure${season ? ` of ${season}` : ''} and the first safe day of picking`,
  columns: [
    column('given_on', 'Given'),
    column('material', 'Material'),
    column('spots', 'Spots'),
    column('wait_days', 'Wait', 'days'),
    column('earliest_on', 'First safe day'),
  ],
  rows: lines.map(({ given, material, spots, days, earliest }) => [
    given.text,
    material,
    spots?.join(' ') ?? 'all',
    days,
    earliest,
  ]),
});
