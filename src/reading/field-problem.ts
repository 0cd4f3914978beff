import type { z } from 'zod';
import type { UnitMeta } from '../records/field/quantity.ts';
import { metaOf } from '../records/field/record.ts';
import { DIMENSIONS } from '../units.ts';
import { nearest } from './nearest.ts';
import type { Problem } from './problem.ts';
import { shapeAt, titleOf } from './schema-keys.ts';
import { childOf, problemAt, type Source, type Tree, type TreePath } from './source.ts';

type Issue = z.core.$ZodIssue;

/** Past so many unknown keys in one record it is no record. */
const MOST_KEYS = 50;

/** Turns what a schema says of one record into problems with places and what to type instead. */
export function fieldProblems(source: Source, base: TreePath, schema: z.core.$ZodType, issue: Issue): Problem[] {
  const path = issue.path as (string | number)[];
  const at = [...base, ...path];
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.slice(0, MOST_KEYS).map((key) => unknownKey(source, [...at, key], shapeAt(schema, path), key));
    case 'invalid_type':
      return [wrongShape(source, at, shapeAt(schema, path.slice(0, -1)), issue)];
    case 'custom': {
      const params = issue.params as { code?: string; hint?: string } | undefined;
      return [
        problemAt(source, at, { code: params?.code ?? 'refused', message: issue.message, hint: params?.hint ?? null }),
      ];
    }
    default:
      return [problemAt(source, at, { code: 'refused', message: issue.message, hint: null })];
  }
}

function unknownKey(
  source: Source,
  at: TreePath,
  shape: Readonly<Record<string, z.core.$ZodType>>,
  key: string,
): Problem {
  const say = (code: string, message: string, hint: string): Problem =>
    problemAt(source, at, { code, message, hint, part: 'key' });
  if (valueAt(source.tree, at) === '') return afterComma(key, say);
  const units = unitsFor(shape, key);
  if (units)
    return say('unit-missing', `"${key}" does not say its unit, or one the book does not know`, `write ${units}`);
  const near = nearest(key, Object.keys(shape));
  const known = Object.keys(shape).join(', ');
  return say(
    'unknown-key',
    `"${key}" is not a key here`,
    near ? `did you mean ${near}?` : `the keys here are: ${known}`,
  );
}

/** Only a word between braces without its colon is a key with an empty text: a comma of a text or number came before it. */
const afterComma = (key: string, say: (code: string, message: string, hint: string) => Problem): Problem =>
  /^\d/.test(key)
    ? say('decimal-comma', 'a comma inside braces begins a new key', 'write decimals with a point: 6.4')
    : say(
        'comma-in-text',
        `a comma inside braces begins a new key: "${key}"`,
        `put the text with the comma in quotes: "…, ${key}"`,
      );

/** `mass` or `mass_g` where `mass_kg` and `mass_lb` are known: the pair to choose from. */
function unitsFor(shape: Readonly<Record<string, z.core.$ZodType>>, key: string): string | null {
  for (const field of Object.values(shape)) {
    const { siKey, pair, dimension } = (metaOf(field) ?? {}) as Partial<UnitMeta>;
    if (!siKey || !pair || !dimension) continue;
    const stem = siKey.slice(0, -(DIMENSIONS[dimension].si.length + 1));
    if (key === stem || (key.startsWith(`${stem}_`) && partsOf(key) <= partsOf(siKey))) return pair;
  }
  return null;
}

const partsOf = (key: string): number => key.split('_').length;

function wrongShape(
  source: Source,
  at: TreePath,
  shape: Readonly<Record<string, z.core.$ZodType>>,
  issue: z.core.$ZodIssueInvalidType,
): Problem {
  const last = at.at(-1);
  const key = typeof last === 'string' ? last : '';
  if (valueAt(source.tree, at) === undefined) {
    const title = titleOf(shape[key]);
    return problemAt(source, at, {
      code: 'missing-key',
      message: `"${key}" is missing`,
      hint: `add "${key}:" and its value${title ? `, ${title.toLowerCase()}` : ''}`,
    });
  }
  const wanted: Readonly<Record<string, string>> = {
    string: 'one value',
    array: 'a list, each line beginning with "- "',
    object: 'keys with values, further in',
    record: 'keys with values, further in',
  };
  return problemAt(source, at, {
    code: 'wrong-shape',
    message: key ? `"${key}" holds the wrong kind of thing` : 'this is the wrong kind of thing',
    hint: `write ${wanted[issue.expected] ?? issue.expected}`,
  });
}

const valueAt = (tree: Tree, path: TreePath): Tree | undefined =>
  path.reduce<Tree | undefined>((node, step) => childOf(node, step), tree);
