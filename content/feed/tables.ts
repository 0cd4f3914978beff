import { column, type Table } from '../../src/book/table.ts';
import type { Fed } from './fed-lines.ts';
import type { LateLine } from './late-lines.ts';

export const fedTable = ({ season, spots }: Fed): Table => ({
  id: 'feed-spots',
  title: `Nitrogen that spots were given in ${season}`,
  columns: [
    column('spot', 'Spot'),
    column('entries', 'Entries'),
    column('untold', 'Of them without a number'),
    column('share_untold', 'Of them with no number for the first year'),
    column('n_g_per_m2_least', 'Nitrogen, least', 'g_per_m2'),
    column('n_g_per_m2_most', 'Nitrogen, most', 'g_per_m2'),
    column('first_year_g_per_m2_least', 'Used in the first year, least', 'g_per_m2'),
    column('first_year_g_per_m2_most', 'Used in the first year, most', 'g_per_m2'),
  ],
  rows: spots.map(({ spot, entries, untold, share_untold, n_g_per_m2, first_year_g_per_m2 }) => [
    spot.id,
    entries,
    untold,
    untold + share_untold,
    n_g_per_m2?.low ?? null,
    n_g_per_m2?.high ?? null,
    first_year_g_per_m2?.low ?? null,
    first_year_g_per_m2?.high ?? null,
  ]),
});

export const lateTable = (lines: readonly LateLine[], season: string): Table => ({
  id: 'feed-late-nitrogen',
  title: `Nitrogen given in ${season} on the day of the first female flower or later`,
  columns: [
    column('given_on', 'Given'),
    column('material', 'Material'),
    column('spots', 'Spots'),
    column('flower', 'First female flower'),
    column('holds_nitrogen', 'Holds nitrogen'),
  ],
  rows: lines.map(({ given, name, spots, flower, bears }) => [given.text, name, spots.join(' '), flower, bears]),
});
