import type { z } from 'zod';
import { KINDS, type Kind } from '../reading/kinds.ts';
import { shapeAt, titleOf } from '../reading/schema-keys.ts';
import type { TreePath } from '../reading/source.ts';
import { metaOf } from '../records/field/record.ts';

/** A word to circle, with the small code that stands for it in a file. */
export interface CircledWord {
  readonly word: string;
  /** Null where the schema has none. */
  readonly code: string | null;
  /** Name of its drawing, if somebody made one. */
  readonly drawing: string;
}

/** A column to write or circle in, under the heading by which the record's schema knows it. */
export interface BlankColumn {
  /** Key of the record, parts written as `pick.mass_kg`. */
  readonly key: string;
  readonly title: string;
  /** To circle; empty where one writes. */
  readonly words: readonly CircledWord[];
  /** A row of drawings under the heading shows its words. */
  readonly drawn: boolean;
  /** Beside the widths of the other columns, in any unit. */
  readonly width: number;
}

/** A sheet for a pencil in the plot. */
export interface BlankSheet {
  readonly id: string;
  readonly title: string;
  /** How to fill it, in a sentence or two. */
  readonly rule: string;
  readonly columns: readonly BlankColumn[];
  /** What is known already, by column from the left; the rest of a row is blank. */
  readonly known: readonly (readonly string[])[];
  /** Rows that one printed sheet holds; the last one is filled up with blank rows. */
  readonly rows_a_sheet: number;
  /** Rows of two lines of words and more; others are 9 mm high. */
  readonly tall: boolean;
  /** On its side: 255 × 186 mm. */
  readonly landscape: boolean;
  /** Ids of the cautions of that work. */
  readonly cautions: readonly string[];
}

/** One printed side. */
export interface SheetSide {
  readonly number: number;
  readonly of: number;
  /** As many cells as columns; null to be written in. */
  readonly rows: readonly (readonly (string | null)[])[];
}

/**
 * The column of a key of a kind of record, at a path within it, such as `['fruits', 0]`. Throws RangeError for a key
 * that the schema does not know or gives no title.
 */
export function blankColumn(kind: Kind, at: TreePath, key: string, width: number): BlankColumn {
  const field = shapeAt(KINDS[kind].schema, at)[key];
  const title = titleOf(field);
  if (!field || title === null) throw new RangeError(`invalid column: ${kind} has no titled ${[...at, key].join('.')}`);
  const path = [...at.filter((step) => typeof step === 'string'), key].join('.');
  return { key: path, title, words: wordsOf(field, key), drawn: false, width };
}

function wordsOf(field: z.core.$ZodType, key: string): CircledWord[] {
  const { words = [], codes = {} }: Ladder = metaOf(field) ?? {};
  const codeOf = (word: string): string | null => Object.keys(codes).find((code) => codes[code] === word) ?? null;
  return words.map((word) => ({ word, code: codeOf(word), drawing: `${key}-${word}`.replaceAll('_', '-') }));
}

interface Ladder {
  readonly words?: readonly string[];
  readonly codes?: Readonly<Record<string, string>>;
}

/** Widths as they share a hundred, for a stylesheet. */
export function sharesOf(columns: readonly BlankColumn[]): number[] {
  const all = columns.reduce((sum, { width }) => sum + width, 0);
  return columns.map(({ width }) => Math.round((1000 * width) / all) / 10);
}

/** At least one side, each full. */
export function sidesOf({ columns, known, rows_a_sheet }: BlankSheet): SheetSide[] {
  const of = Math.max(1, Math.ceil(known.length / rows_a_sheet));
  return Array.from({ length: of }, (_, side) => ({
    number: side + 1,
    of,
    rows: Array.from({ length: rows_a_sheet }, (_row, row) => {
      const told = known[side * rows_a_sheet + row] ?? [];
      return columns.map((_column, index) => told[index] ?? null);
    }),
  }));
}
