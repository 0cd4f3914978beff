import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { z } from 'zod';
import { amount } from '../../src/records/field/amount.ts';
import { choice, yesNo } from '../../src/records/field/choice.ts';
import { id, reference } from '../../src/records/field/id.ts';
import { quantity } from '../../src/records/field/quantity.ts';
import { record } from '../../src/records/field/record.ts';
import { text } from '../../src/records/field/text.ts';
import { exactDay, when } from '../../src/records/field/when.ts';
import { toSi } from '../../src/units.ts';

/** The value read, or the code and hint of the refusal. */
function read(field: z.ZodType, typed: unknown): unknown {
  const result = field.safeParse(typed);
  if (result.success) return result.data;
  const params = result.error.issues.map((issue) => (issue.code === 'custom' ? issue.params : { code: issue.code }));
  return params.map((param) => `${param?.code}${param?.hint ? `: ${param.hint}` : ''}`).join('; ');
}

describe('a number', () => {
  const mass = amount({ min: 0, max: 400 });
  const exact = (value: number) => ({ value, entered: 'exact' });
  const CASES: readonly [string, unknown][] = [
    ['6.4', exact(6.4)],
    [' 6.4 ', exact(6.4)],
    ['+6.40', exact(6.4)],
    ['.5', exact(0.5)],
    ['6.', exact(6)],
    ['about 6', { value: 6, entered: 'about' }],
    ['6,4', 'decimal-comma: write 6.4'],
    ['about 6,4', 'decimal-comma: write about 6.4'],
    ['6.4 kg', 'unit-in-value: write 6.4; the unit belongs in the key'],
    ['6,4kg', 'unit-in-value: write 6.4; the unit belongs in the key'],
    ['about 6 lb', 'unit-in-value: write about 6; the unit belongs in the key'],
    ['-1', 'out-of-range: check the number and the unit in the key'],
    ['400.01', 'out-of-range: check the number and the unit in the key'],
  ];
  for (const [typed, expected] of CASES) test(typed, () => expect(read(mass, typed)).toEqual(expected));

  test('what looks like a number to a program, or to a spreadsheet, is none', () => {
    for (const typed of [
      '1e3',
      '1E+3',
      '0x10',
      '0b1',
      '1_000',
      "1'000",
      '1 000',
      '1.000,5',
      '6.4.1',
      '½',
      '3/4',
      '٣',
      'NaN',
      'Infinity',
      '.',
      '-',
      'six',
    ])
      expect(read(mass, typed), typed).toMatch(/^not-a-number: /);
  });

  test('a whole number has no part', () => {
    expect(read(amount({ min: 0, max: 9, whole: true }), '3.5')).toMatch(/^not-whole/);
    expect(read(amount({ min: 0, max: 9, whole: true }), '3.0')).toEqual(exact(3));
  });

  test('about and trace only where they belong', () => {
    expect(read(amount({ min: 0, max: 9, about: false }), 'about 3')).toBe('about-not-allowed: write 3');
    expect(read(mass, 'trace')).toMatch(/^not-a-number/);
    expect(read(amount({ min: 0, max: 9, trace: true }), 'trace')).toEqual({ value: 0, entered: 'trace' });
  });
});

describe('a date', () => {
  const CASES: readonly [string, string][] = [
    ['12/08/2025', 'date-order: write 2025-08-12 or 2025-12-08'],
    ['12.8.2025', 'date-order: write 2025-08-12 or 2025-12-08'],
    ['12-08-2025', 'date-order: write 2025-08-12 or 2025-12-08'],
    ['8/8/2025', 'date-order: write 2025-08-08'],
    ['25/12/2025', 'date-order: write 2025-12-25'],
    ['12/25/2025', 'date-order: write 2025-12-25'],
    ['31/31/2025', 'date-order: write year-month-day, like 2025-08-12'],
    ['2025/8/2', 'date-form: write 2025-08-02'],
    ['2025-8-2', 'date-form: write 2025-08-02'],
  ];
  for (const [typed, expected] of CASES) {
    test(typed, () => {
      expect(read(when({ title: 'x' }), typed)).toBe(expected);
      expect(read(exactDay({ title: 'x' }), typed)).toBe(expected);
    });
  }

  test('a day no calendar has, a year no garden has, and words', () => {
    expect(read(exactDay({ title: 'x' }), '2025-02-30')).toMatch(/^no-such-day/);
    expect(read(exactDay({ title: 'x' }), '1025-08-12')).toMatch(/^year-out-of-range/);
    expect(read(when({ title: 'x' }), '2025-08-12..2205-08-12')).toMatch(/^year-out-of-range/);
    expect(read(when({ title: 'x' }), 'last Tuesday')).toMatch(/^date-form: .*about 2025-08-12/);
    expect(read(exactDay({ title: 'x' }), 'about 2025-08-12')).toMatch(/^date-form: .*one exact day/);
  });
});

describe('an id', () => {
  test('is letters and digits, parts joined by single hyphens, as typed', () => {
    for (const typed of ['M1', '08', '2025', 'a-B-3', 'constructor', 'toString', 'x'.repeat(40)])
      expect(read(id('x'), typed)).toBe(typed);
  });
  test('is nothing a path or a web address could trip over', () => {
    for (const typed of [
      '../x',
      'a/b',
      'a\\b',
      '.',
      '',
      'a b',
      '-a',
      'a-',
      'a--b',
      'é',
      '__proto__',
      'a%2e',
      'x'.repeat(41),
      'a\n',
    ])
      expect(read(id('x'), typed), typed).toMatch(/^id-form/);
  });
  test('is no word with a meaning of its own, unless a reference allows it', () => {
    for (const typed of ['total', 'Unknown', 'ALL']) expect(read(id('x'), typed)).toMatch(/^reserved-id/);
    expect(read(reference('x', ['unknown']), 'unknown')).toBe('unknown');
    expect(read(reference('x', ['unknown']), 'all')).toMatch(/^reserved-id/);
  });
});

test('a word is taken in any case, and its code from the sheet', () => {
  const state = choice(['unripe', 'prime'], { title: 'x' }, { U: 'unripe' });
  expect(read(state, 'Prime')).toBe('prime');
  expect(read(state, 'u')).toBe('unripe');
  expect(read(state, 'toString')).toBe('unknown-word: write one of: unripe, prime');
  expect(['yes', 'No', 'TRUE', 'false'].map((typed) => read(yesNo({ title: 'x' }), typed))).toEqual([
    true,
    false,
    true,
    false,
  ]);
  expect(read(yesNo({ title: 'x' }), 'y')).toBe('unknown-word: write yes or no');
  const hyphened = choice(['just-ripe', 'so-so'], { title: 'x' });
  expect(['just-ripe', 'just ripe', ' Just  Ripe '].map((word) => hyphened.parse(word))).toEqual(
    Array(3).fill('just-ripe'),
  );
  expect(hyphened.safeParse('justripe').success).toBe(false);
});

test('a text is trimmed, bounded, and printable', () => {
  const words = text('x', 12);
  expect(read(words, '  two words ')).toBe('two words');
  expect(read(words, 'two\nlines\t😀')).toBe('two\nlines\t😀');
  expect(read(words, 'thirteen word')).toMatch(/^text-too-long/);
  expect(read(words, ' ')).toMatch(/^blank-text/);
  for (const odd of ['\u0000', '\u001b[31m', '\u007f', '\u0085', '\u202e', '\ud83d', '\ude00', '\uffff'])
    expect(read(words, `a${odd}b`), odd).toMatch(/^odd-letter/);
});

describe('a measure in one of two units', () => {
  const schema = record({ ...quantity('mass')('mass', { min: 0, max: 400 }, { title: 'Mass' }) });

  test('keeps what was written and carries the SI value', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 88_000 }), (hundredths) => {
        const pounds = hundredths / 100;
        expect(read(schema, { mass_lb: String(pounds) })).toEqual({
          mass_lb: pounds,
          mass_kg: toSi('mass', 'lb', pounds),
          entered: {},
        });
      }),
    );
    expect(read(schema, { mass_kg: 'about 4' })).toEqual({ mass_kg: 4, mass_lb: null, entered: { mass_kg: 'about' } });
    expect(read(schema, { mass_lb: 'about 4' })).toMatchObject({ entered: { mass_kg: 'about' } });
    expect(read(schema, {})).toEqual({ mass_kg: null, mass_lb: null, entered: {} });
  });

  test('has the same bounds in both', () => {
    // 400 kg = 881.85 lb, by 1 lb = 0.45359237 kg (NIST SP 811, from memory).
    expect(read(schema, { mass_lb: '881.8' })).toMatchObject({ mass_lb: 881.8 });
    expect(read(schema, { mass_lb: '881.9' })).toMatch(/^out-of-range/);
  });

  test('is never written twice', () => {
    expect(read(schema, { mass_kg: '1', mass_lb: '2' })).toMatch(/^two-units/);
  });
});
