import { describe, expect, test } from 'vitest';
import { linkTexts, type Texts, textsIn } from './garden-texts.ts';

const starter = textsIn('data/starter');
const PICKINGS = 'seasons/2025/pickings.yaml';
const WEATHER = 'weather/back-step.csv';
const picking = (text: string): Texts => ({ ...starter, [PICKINGS]: text });
const bytes = (...codes: number[]): Uint8Array => new Uint8Array(codes);

const HOSTILE: readonly [string, Texts, string][] = [
  ['lists nested in brackets', picking('['.repeat(100_000)), 'too-deep'],
  ['lists nested by dashes', picking('- '.repeat(100_000)), 'too-deep'],
  [
    'maps nested by indents',
    picking(Array.from({ length: 400 }, (_, depth) => `${' '.repeat(depth)}a:\n`).join('')),
    'too-deep',
  ],
  ['brackets closed only in texts', picking('["]",'.repeat(100_000)), 'too-deep'],
  ['brackets closed only in comments', picking('[ # ]\n'.repeat(100_000)), 'too-deep'],
  ['maps in braces', picking('{a: '.repeat(100_000)), 'too-deep'],
  [
    'indents behind a bracket in a text',
    picking(`a: "["\n${Array.from({ length: 400 }, (_, depth) => `${' '.repeat(depth)}b:\n`).join('')}`),
    'too-deep',
  ],
  ['a thousand million laughs', picking(`- &a [x, x]\n${'- [*a, *a, *a]\n'.repeat(100)}`), 'alias'],
  ['a merge key', picking('- {<<: {planting: R1}, picked_on: 2025-08-12, count: 1}\n'), 'unknown-key'],
  ['a sign that rings', picking('- {planting: R1, picked_on: 2025-08-12, count: 1, note: "a\u0007"}\n'), 'odd-letter'],
  ['no sign, escaped', picking('- {planting: R1, picked_on: 2025-08-12, count: 1, note: "a\\0"}\n'), 'odd-letter'],
  ['half a letter', picking('- {planting: R1, picked_on: 2025-08-12, count: 1, note: "a\\uD800"}\n'), 'odd-letter'],
  [
    'words that turn round',
    picking('- {planting: R1, picked_on: 2025-08-12, count: 1, by: "a\u202eb"}\n'),
    'odd-letter',
  ],
  ['infinity', picking('- {planting: R1, picked_on: 2025-08-12, count: .inf}\n'), 'not-a-number'],
  [
    'a number of four hundred digits',
    picking(`- {planting: R1, picked_on: 2025-08-12, count: 1, mass_kg: ${'9'.repeat(400)}}\n`),
    'out-of-range',
  ],
  ['sixteen bits a letter', { ...starter, [PICKINGS]: new Uint8Array(Buffer.from('- a\n', 'utf16le')) }, 'not-text'],
  ['aliases', picking('- &a {planting: R1, picked_on: 2025-08-12, count: 1}\n- *a\n'), 'alias'],
  ['a tag', picking('- !!js/function {planting: R1}\n'), 'tag'],
  ['two documents', picking('- {planting: R1, picked_on: 2025-08-12, count: 1}\n---\n- {}\n'), 'two-documents'],
  ['bytes that are no text', { ...starter, [PICKINGS]: bytes(45, 0, 1, 2) }, 'not-text'],
  ['a file of nine megabytes', picking(`# ${'x'.repeat(9_000_000)}\n`), 'too-large'],
  [
    'a key of the language itself',
    picking('- {planting: R1, picked_on: 2025-08-12, count: 1, __proto__: {polluted: 1}}\n'),
    'unknown-key',
  ],
  ['an id that is a path', picking('- {id: ../../etc, planting: R1, picked_on: 2025-08-12, count: 1}\n'), 'id-form'],
  ['an id that is reserved', picking('- {id: total, planting: R1, picked_on: 2025-08-12, count: 1}\n'), 'reserved-id'],
  [
    'a reference to what every object has',
    picking('- {planting: constructor, picked_on: 2025-08-12, count: 1}\n'),
    'dangling-id',
  ],
  ['a number past all bounds', picking('- {planting: R1, picked_on: 2025-08-12, count: 1e309}\n'), 'not-a-number'],
  ['a hexadecimal number', picking('- {planting: R1, picked_on: 2025-08-12, count: 0x10}\n'), 'not-a-number'],
  ['a day that is none', picking('- {planting: R1, picked_on: 2025-02-30, count: 1}\n'), 'no-such-day'],
  ['a column twice', { ...starter, [WEATHER]: 'date,rain_mm,rain_mm\n2025-08-12,1,2\n' }, 'column-twice'],
  ['a ragged row', { ...starter, [WEATHER]: 'date,rain_mm\n2025-08-12,1,2\n' }, 'cell-count'],
  ['an open quote', { ...starter, [WEATHER]: 'date,note\n2025-08-12,"open\n' }, 'csv'],
  ['a file of another ending', { ...starter, 'seasons/2025/fruits.yml': '- id: F1\n' }, 'unread-file'],
  ['western European letters', { ...starter, 'seasons/2025/visits.yaml': bytes(35, 32, 233, 10) }, 'not-utf8'],
];

describe('a hostile file is refused in a line, with a place', () => {
  for (const [name, texts, code] of HOSTILE) {
    test(name, () => {
      const { problems } = linkTexts(texts);
      expect(problems.map((problem) => problem.code)).toContain(code);
      for (const { file, line, column } of problems) {
        expect(file).not.toBe('');
        expect(line).toBeGreaterThanOrEqual(1);
        expect(column).toBeGreaterThanOrEqual(1);
      }
    });
  }

  test('and leaves nothing behind', () => {
    expect(({} as { polluted?: number }).polluted).toBeUndefined();
  });

  test('a byte order mark, and lines ended as elsewhere, change nothing', () => {
    const marked = Object.fromEntries(
      Object.entries(starter).map(([path, text]) => [path, `\uFEFF${text.replaceAll('\n', '\r\n')}`]),
    );
    expect(linkTexts(marked).problems).toEqual([]);
    expect(linkTexts(marked).garden).toEqual(linkTexts(starter).garden);
  });

  test('lines ended as on old machines change nothing either', () => {
    const old = Object.fromEntries(Object.entries(starter).map(([path, text]) => [path, text.replaceAll('\n', '\r')]));
    expect(linkTexts(old).problems).toEqual([]);
    expect(linkTexts(old).garden).toEqual(linkTexts(starter).garden);
  });

  test('brackets in texts are no nesting', () => {
    const rows = Array.from(
      { length: 60 },
      (_, n) => `- planting: R1\n  picked_on: 2025-08-12\n  count: ${n}\n  note: see [ and {\n`,
    );
    expect(linkTexts(picking(rows.join(''))).problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  test('the place of a too deep line is that line', () => {
    const { problems } = linkTexts(picking(`- planting: R1\n  count: ${'['.repeat(30)}\n`));
    expect(problems).toMatchObject([{ code: 'too-deep', line: 2 }]);
  });

  test('the place of a second document is its own', () => {
    const { problems } = linkTexts(picking('# one\n- {planting: R1, picked_on: 2025-08-12, count: 1}\n---\n- {}\n'));
    expect(problems).toMatchObject([{ code: 'two-documents', line: 3, column: 1 }]);
  });

  for (const [name, text] of [
    ['distinct keys in one map', Array.from({ length: 20_000 }, (_, n) => `k${n}: x\n`).join('')],
    [
      'distinct keys in one record',
      `- planting: R1\n${Array.from({ length: 20_000 }, (_, n) => `  k${n}: x\n`).join('')}`,
    ],
    ['the same keys over and over', Array.from({ length: 20_000 }, (_, n) => `k${n % 20}: x\n`).join('')],
    ['lines deep in brackets that close in texts', '- {a: "]", b: '.repeat(50_000)],
  ] as const) {
    test(`twenty thousand and more: ${name}, told quickly and not at length`, () => {
      const before = performance.now();
      const { problems } = linkTexts(picking(text));
      expect(problems.length).toBeGreaterThan(0);
      expect(problems.length).toBeLessThanOrEqual(200);
      expect(performance.now() - before).toBeLessThan(4_000);
    });
  }

  test('a file of twenty thousand slips is told in a second or two', () => {
    const before = performance.now();
    expect(linkTexts(picking('a: b: c\n'.repeat(20_000))).problems.length).toBeLessThanOrEqual(200);
    expect(performance.now() - before).toBeLessThan(10_000);
  });
});
