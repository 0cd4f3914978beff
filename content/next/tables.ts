import { column, type Table } from '../../src/book/table.ts';
import type { MissingRecord } from './missing-record.ts';
import type { SameGround } from './same-ground.ts';

export const recordsTable = (missing: readonly MissingRecord[]): Table => ({
  id: 'next-records',
  title: 'Records that the last season lacks',
  columns: [
    column('record', 'Record'),
    column('questions', 'Questions it bears on'),
    column('answers', 'Which questions'),
  ],
  rows: missing.map(({ record, answers }) => [record, answers.length, answers.join(', ')]),
});

export const planTable = (ground: SameGround | null): Table => ({
  id: 'next-spots',
  title: 'What stood in each spot',
  columns: [
    column('spot', 'Spot'),
    column('last', 'Last season'),
    column('before', 'The season before'),
    column('crop_again', 'Crop in both'),
  ],
  rows: (ground?.spots ?? []).map(({ spot, last, before, again }) => [spot, last.join(', '), before.join(', '), again]),
});
