import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { depthAtMost, lineByTokens, lineDeeperThan } from '../../src/reading/yaml-nesting.ts';

const SIGNS = [
  '{',
  '[',
  ']',
  '}',
  'a',
  'id: ',
  '- ',
  '? ',
  ': ',
  ', ',
  '"',
  "'",
  '# ',
  '|',
  '>',
  '\n',
  '\n  ',
  '\n    ',
  '\r\n',
  '\t',
  '\\',
  '&x ',
  '---\n',
];

test('the depth told from the lines is never less than the tokens have', () => {
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom(...SIGNS), { maxLength: 60 }),
      fc.integer({ min: 0, max: 8 }),
      (signs, most) => {
        const text = signs.join('');
        expect(lineDeeperThan(text, most)).toBe(lineByTokens(text, most));
      },
    ),
    { numRuns: 4000, seed: 7 },
  );
});

test.each([
  ['quotes that run on', "x: [[[[\n '\n ]]]]\n ',\n [[[[a]]]]\n ]]]]\n", 9],
  ['brackets in a comment', 'x: [[ # ]]\n[[a]]]]\n', 5],
  ['brackets in quotes', 'x: [[ "]]",\n[[a]]]]\n', 5],
  ['dashes in one line', '- - - - a: b\n', 5],
])('%s hide no level', (_, text, depth) => {
  expect(lineByTokens(text, depth)).toBeNull();
  for (let most = 0; most < depth; most++) expect(lineDeeperThan(text, most)).not.toBeNull();
});

test('lines suffice for the records of the demo garden that have no odd quote', () => {
  const seasons = 'data/garden/seasons';
  const texts = readdirSync(seasons, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.yaml'))
    .map((path) => readFileSync(join(seasons, path), 'utf8'));
  const shallow = texts.filter((text) => depthAtMost(text) <= 24);
  expect(shallow.length).toBeGreaterThan(texts.length / 2);
});
