import { column, type Table } from '../../src/book/table.ts';
import type { OwnMulch } from './own-mulch.ts';
import type { StrawLine } from './straw.ts';

export const ownMulchTable = (lines: readonly OwnMulch[]): Table => ({
  id: 'mulch-laid',
  title: 'Mulch laid here, in weeks from planting out',
  columns: [
    column('season', 'Season'),
    column('laid_on', 'Laid'),
    column('topped_up', 'Topped up'),
    column('material', 'Material'),
    column('spots', 'Spots'),
    column('cover_of_ten', 'Ground covered', 'of_ten'),
    column('depth_cm', 'Depth', 'cm'),
    column('weeks_least', 'Weeks after planting out, least', 'weeks'),
    column('weeks_most', 'Weeks after planting out, most', 'weeks'),
  ],
  rows: lines.map(({ season, laid, topped_up, material, spots, cover_of_ten, depth_cm, weeks }) => [
    season,
    laid.text,
    topped_up ? 'yes' : 'no',
    material,
    spots?.join(' ') ?? 'all',
    cover_of_ten,
    depth_cm,
    weeks?.low ?? null,
    weeks?.high ?? null,
  ]),
});

export const strawTable = (lines: readonly StrawLine[]): Table => ({
  id: 'mulch-straw',
  title: 'Straw for a spot, laid at the least and at the full depth',
  columns: [
    column('spots', 'Spots'),
    column('area_m2', 'Area of each', 'm2'),
    column('volume_l_least', 'Straw, least', 'l'),
    column('volume_l_most', 'Straw, most', 'l'),
    column('barrows_least', 'Barrows, least', 'barrows'),
    column('barrows_most', 'Barrows, most', 'barrows'),
  ],
  rows: lines.map(({ spots, area_m2, l, barrows }) => [
    spots?.join(' ') ?? null,
    area_m2,
    l.low,
    l.high,
    barrows.low,
    barrows.high,
  ]),
});
