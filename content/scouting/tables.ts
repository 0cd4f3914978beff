import { column, type Table } from '../../src/book/table.ts';
import type { SeasonLooks } from './season-looks.ts';
import type { Troubles } from './troubles.ts';

export const troublesTable = ({ lines }: Troubles): Table => ({
  id: 'scouting-troubles',
  title: 'Troubles, how they look and what to do',
  columns: [
    column('crop', 'Crop'),
    column('trouble', 'Trouble'),
    column('name', 'Name'),
    column('looks', 'How it looks'),
    column('does', 'What to do'),
  ],
  rows: lines.flatMap(({ id, name, looks, does, crops }) => crops.map((crop) => [crop, id, name, looks, does])),
});

export const looksTable = ({ label, slug, looks }: SeasonLooks): Table => ({
  id: `scouting-${slug.toLowerCase()}-looks`,
  title: `Looks of ${label}`,
  columns: [
    column('looked_on', 'Looked'),
    column('where', 'Where'),
    column('found', 'Found'),
    column('what', 'What it was'),
    column('checked', 'Plants looked at', 'plants'),
    column('affected', 'Of them with it', 'plants'),
    column('severity', 'How bad, 0 to 9, 9 worst'),
  ],
  rows: looks.map(({ looked_on, where, found, what, checked, affected, severity }) => [
    looked_on.text,
    where ?? 'all',
    found,
    what,
    checked,
    affected,
    severity,
  ]),
});

/** The grades under the curves, one row a day and course. */
export const gradesTable = ({ label, slug, courses }: SeasonLooks): Table => ({
  id: `scouting-${slug.toLowerCase()}-grades`,
  title: `How bad, day by day, ${label}`,
  columns: [
    column('found', 'Found'),
    column('where', 'Where'),
    column('looked_on', 'Looked'),
    column('severity', 'How bad, 0 to 9, 9 worst'),
    column('area_step_days', 'Area under the curve, steps times days'),
  ],
  rows: courses.flatMap(({ found, where, grades, step_days }) =>
    grades.map(({ on, severity }) => [found, where ?? 'all', on, severity, step_days]),
  ),
});
