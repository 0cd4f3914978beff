import { column, type Table } from '../../src/book/table.ts';
import type { Season } from '../../src/garden/garden.ts';
import type { Entry } from './entry.ts';

/** Everything that happened, a row a kind and day. */
export const diaryTable = ({ slug, label }: Season, entries: readonly Entry[]): Table => ({
  id: `diary-${slug.toLowerCase()}`,
  title: `What was done when, ${label}`,
  columns: [
    column('on', 'When, as written'),
    column('first', 'From'),
    column('last', 'To'),
    column('lane', 'Kind of work'),
    column('what', 'What'),
    column('word', 'Which'),
    column('count', 'How many'),
    column('names', 'Spots, fruits or varieties'),
  ],
  rows: entries.map(({ date, lane, code, word, count, names }) => [
    date.text,
    date.first,
    date.last,
    lane,
    code,
    word,
    count,
    names.join(' ') || null,
  ]),
});
