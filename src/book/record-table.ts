import type { z } from 'zod';
import { KINDS, type Kind } from '../reading/kinds.ts';
import { shapeAt, titleOf } from '../reading/schema-keys.ts';
import type { Cell, Column, Table } from './table.ts';

/** Never published: who wrote a record, and free remarks that may name people. */
const PRIVATE = ['by', 'note'];

interface Field {
  readonly path: readonly string[];
  readonly column: Column;
}

/**
 * All records of one kind as a table: one column for each key of the schema, parts written as `pick.mass_kg`.
 * A record that holds a list of maps is handed in once for each of them, its keys spread beside its own.
 */
export function recordTable(
  kind: Kind,
  title: string,
  rows: readonly { readonly season: string | null; readonly record: object }[],
): Table {
  const fields = fieldsOf(KINDS[kind].schema, []);
  const seasonal = rows.some(({ season }) => season !== null);
  return {
    id: kind,
    title,
    columns: [
      ...(seasonal ? [{ key: 'season', title: 'Season', unit: null }] : []),
      ...fields.map(({ column }) => column),
    ],
    rows: rows.map(({ season, record }) => [
      ...(seasonal ? [season] : []),
      ...fields.map(({ path }) => cellAt(record, path)),
    ]),
  };
}

function fieldsOf(schema: z.core.$ZodType, path: readonly string[]): Field[] {
  return Object.entries(shapeAt(schema, path)).flatMap(([key, field]) => {
    const at = [...path, key];
    if (PRIVATE.includes(key)) return [];
    if (Object.keys(shapeAt(schema, at)).length > 0) return fieldsOf(schema, at);
    const listed = Object.entries(shapeAt(schema, [...at, 0]));
    if (listed.length > 0)
      return listed.flatMap(([inner, one]) => (PRIVATE.includes(inner) ? [] : [fieldAt([inner], one)]));
    return [fieldAt(at, field)];
  });
}

const fieldAt = (path: readonly string[], field: z.core.$ZodType): Field => ({
  path,
  column: { key: path.join('.'), title: titleOf(field) ?? path.join(' '), unit: null },
});

/** Dates as they were written, yes and no as words, an "about" kept. */
function cellAt(record: object, path: readonly string[]): Cell {
  const holder = path
    .slice(0, -1)
    .reduce<unknown>((node, key) => (node as Record<string, unknown> | null)?.[key] ?? null, record);
  const key = path.at(-1) ?? '';
  const value = (holder as Record<string, unknown> | null)?.[key] ?? null;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') {
    const entered = (holder as { entered?: Record<string, string> }).entered?.[key];
    return entered === 'about' ? `about ${value}` : (entered ?? value);
  }
  if (typeof value === 'object' && value !== null) return textOf(value);
  return typeof value === 'string' ? value : null;
}

function textOf(value: object): string | null {
  if ('text' in value) return String(value.text);
  if ('id' in value) return String(value.id);
  return null;
}
