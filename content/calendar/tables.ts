import { column, type Table } from '../../src/book/table.ts';
import { type CropYear, YEAR_STEPS } from '../../src/ledger/year/crop-year.ts';

/** Every step of a crop's year, in days from planting out and as dates. */
export const yearTable = ({ crop, bands }: CropYear): Table => ({
  id: `calendar-${crop.id.toLowerCase()}`,
  title: `The year in outline: ${crop.id}`,
  columns: [
    column('step', 'Step'),
    column('from_days', 'From, days from planting out', 'days'),
    column('to_days', 'To, days from planting out', 'days'),
    column('first', 'From'),
    column('last', 'To'),
    column('basis', 'How it is known'),
    column('seasons', 'Seasons, plantings or years under it'),
    column('sources', 'Sources'),
  ],
  rows: YEAR_STEPS.flatMap((step) => {
    const band = bands[step];
    if (!band) return [];
    const { from_days, to_days, first, last, basis, seasons, sources } = band;
    return [[step, from_days, to_days, first, last, basis, seasons, sources.join(' ') || null]];
  }),
});
