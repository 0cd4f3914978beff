import { z } from 'zod';
import { KINDS, type Kind } from '../reading/kinds.ts';
import { shapeAt, titleOf } from '../reading/schema-keys.ts';
import type { TreePath } from '../reading/source.ts';
import { holdsOf, mayBeReckoned, TEXT } from './field-holds.ts';
import type { Cell, Column, Table } from './table.ts';

/** Which records a table holds, and what becomes of them. */
export interface RecordSheet extends Pick<Table, 'id' | 'title' | 'primaryKey' | 'foreignKeys'> {
  readonly kind: Kind;
  /** Where in the kind's schema its rows stand, for instance `['beds', 0]`; without it, the whole record. */
  readonly at?: TreePath;
  /** Keys left out, parts written as `place.elevation_m`, beside notes. */
  readonly without?: readonly string[];
  /** What may be printed of whoever wrote a record. */
  readonly publishedBy: (by: string | null) => string | null;
}

export interface RecordRow {
  readonly season: string | null;
  readonly record: object;
}

interface Field {
  readonly path: readonly string[];
  readonly column: Column;
  readonly reckoned: boolean;
}

/**
 * All records of one kind as a table: one column for each key of the schema, parts written as `pick.mass_kg`.
 * A record that holds a list of maps is handed in once for each of them, its keys spread beside its own.
 * Numbers stand bare; how they were entered, where that was not plainly, is told in a last column.
 */
export function recordTable(sheet: RecordSheet, rows: readonly RecordRow[]): Table {
  const { id, title, primaryKey, foreignKeys, publishedBy } = sheet;
  const fields = fieldsOf(sheet, [], true);
  const seasonal = rows.some(({ season }) => season !== null);
  const reckoned = fields.filter((field) => field.reckoned);
  return {
    id,
    title,
    ...(primaryKey && { primaryKey }),
    ...(foreignKeys && { foreignKeys }),
    columns: [
      ...(seasonal ? [SEASON] : []),
      ...fields.map(({ column }) => column),
      ...(reckoned.length > 0 ? [ENTERED] : []),
    ],
    rows: rows.map(({ season, record }) => [
      ...(seasonal ? [season] : []),
      ...fields.map(({ path }) => cellAt(record, path, publishedBy)),
      ...(reckoned.length > 0 ? [enteredOf(record, reckoned)] : []),
    ]),
  };
}

const SEASON: Column = { key: 'season', title: 'Season', unit: null, holds: { ...TEXT, required: true } };
const ENTERED: Column = {
  key: 'entered',
  title: 'How entered',
  unit: null,
  holds: {
    ...TEXT,
    description:
      'Numbers not written down plainly: "count about" was reckoned, "rain_mm trace" was wet but under the gauge’s mark and stands as 0.',
  },
};
const BY = 'The name of somebody who agreed to be named, else their code; blank where neither may be printed.';

/** Free remarks may name people. A variety's is printed on its page, and checked for names before that. */
const isPrivate = ({ kind, without = [] }: RecordSheet, path: readonly string[]): boolean =>
  (path.at(-1) === 'note' && kind !== 'varieties') || without.includes(path.join('.'));

function fieldsOf(sheet: RecordSheet, path: readonly string[], required: boolean): Field[] {
  const { schema } = KINDS[sheet.kind];
  const base = sheet.at ?? [];
  return Object.entries(shapeAt(schema, [...base, ...path])).flatMap(([key, field]) => {
    const at = [...path, key];
    if (isPrivate(sheet, at)) return [];
    const isNeeded = required && !(field instanceof z.ZodOptional);
    if (Object.keys(shapeAt(schema, [...base, ...at])).length > 0) return fieldsOf(sheet, at, isNeeded);
    const listed = Object.entries(shapeAt(schema, [...base, ...at, 0]));
    if (listed.length === 0) return [fieldAt(at, field, isNeeded)];
    return listed.flatMap(([inner, one]) => (isPrivate(sheet, [inner]) ? [] : [fieldAt([inner], one, false)]));
  });
}

function fieldAt(path: readonly string[], field: z.core.$ZodType, required: boolean): Field {
  const holds = holdsOf(field, required);
  return {
    path,
    column: {
      key: path.join('.'),
      title: titleOf(field) ?? path.join(' '),
      unit: null,
      holds: path.at(-1) === 'by' ? { ...holds, description: BY } : holds,
    },
    reckoned: mayBeReckoned(field),
  };
}

type Part = Readonly<Record<string, unknown>> | null;

/** The map a path's last key stands in; null when the record lacks it. */
const holderOf = (record: object, path: readonly string[]): Part =>
  path.slice(0, -1).reduce<Part>((node, key) => (node?.[key] ?? null) as Part, record as Part);

/** Dates as they were written, yes and no as words, another record as its id, a list with blanks between. */
function cellAt(record: object, path: readonly string[], publishedBy: RecordSheet['publishedBy']): Cell {
  const key = path.at(-1) ?? '';
  const value = holderOf(record, path)?.[key] ?? null;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return value;
  if (typeof value === 'object' && value !== null) return textOf(value);
  if (typeof value !== 'string') return null;
  return key === 'by' ? publishedBy(value) : value;
}

function textOf(value: object): string | null {
  if (Array.isArray(value)) return value.join(' ');
  if ('text' in value) return String(value.text);
  if ('id' in value) return String(value.id);
  return null;
}

/** `count about; pick.mass_kg about`: SI keys, in the order of the columns; null when every number is plain. */
function enteredOf(record: object, fields: readonly Field[]): string | null {
  const told = fields.flatMap(({ path, column }) => {
    const entered = holderOf(record, path)?.entered as Readonly<Record<string, string>> | undefined;
    const how = entered?.[path.at(-1) ?? ''];
    return how ? [`${column.key} ${how}`] : [];
  });
  return told.length > 0 ? told.join('; ') : null;
}
