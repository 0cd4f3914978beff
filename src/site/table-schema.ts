import { TEXT } from '../book/field-holds.ts';
import type { Column, ForeignKey, Holds, Table } from '../book/table.ts';

/** A table's columns and keys in the Table Schema standard, version 1 (specs.frictionlessdata.io/table-schema). */
export function tableSchema({ columns, rows, primaryKey, foreignKeys }: Table, published: ReadonlySet<string>): object {
  const keys = (foreignKeys ?? []).filter(({ table }) => published.has(table));
  return {
    fields: columns.map((column, index) =>
      fieldOf(column, column.holds ?? heldBy(rows.map((row) => row[index] ?? null))),
    ),
    missingValues: [''],
    ...(primaryKey && { primaryKey }),
    ...(keys.length > 0 && { foreignKeys: keys.map(foreignKeyOf) }),
  };
}

/** Numbers where every cell that is filled is one, else text. */
function heldBy(cells: Table['rows'][number]): Holds {
  const filled = cells.filter((cell) => cell !== null);
  const isNumber = filled.length > 0 && filled.every((cell) => typeof cell === 'number');
  return { ...TEXT, type: isNumber ? 'number' : 'string' };
}

function fieldOf({ key, title, unit }: Column, holds: Holds): object {
  const measured = holds.unit ?? unit;
  const constraints = constraintsOf(holds);
  return {
    name: key,
    title,
    type: holds.type,
    ...(holds.description !== null && { description: holds.description }),
    ...(measured !== null && { unit: unitName(measured) }),
    ...(holds.type === 'boolean' && { trueValues: ['yes'], falseValues: ['no'] }),
    ...(Object.keys(constraints).length > 0 && { constraints }),
  };
}

const constraintsOf = ({ required, words, minimum, maximum }: Holds): object => ({
  ...(required && { required }),
  ...(words !== null && { enum: words }),
  ...(minimum !== null && { minimum }),
  ...(maximum !== null && { maximum }),
});

const foreignKeyOf = ({ columns, table, its }: ForeignKey): object => ({
  fields: columns,
  reference: { resource: table, fields: its },
});

const SIGNS: Readonly<Record<string, string>> = { m2: 'm²', ft2: 'ft²', c: '°C', f: '°F', mean_c: '°C' };

/** `kg_per_m2` as kg/m²: a measure's unit, or how a rate is made of two. */
export const unitName = (unit: string): string =>
  unit
    .split('_per_')
    .map((part) => SIGNS[part] ?? part.replaceAll('_', ' '))
    .join('/');
