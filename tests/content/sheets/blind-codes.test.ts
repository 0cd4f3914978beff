import fc from 'fast-check';
import { expect, test } from 'vitest';
import { blindCodes } from '../../../content/sheets/blind-codes.ts';

// Three-figure codes at random are the custom of sensory tests (ISO 8587, ranking; from memory).
const figuresOf = (code: string): string => [...code].sort().join('');

test('codes have three figures, are not of one figure alone and no two are the same figures in another order', () => {
  fc.assert(
    fc.property(fc.string(), fc.integer({ min: 1, max: 60 }), (seedText, howMany) => {
      const codes = blindCodes(seedText, howMany);
      expect(codes).toHaveLength(howMany);
      for (const code of codes) {
        expect(code).toMatch(/^[1-9]\d\d$/);
        expect(code).not.toMatch(/^(.)\1\1$/);
      }
      expect(new Set(codes.map(figuresOf)).size).toBe(howMany);
    }),
    { seed: 8587 },
  );
});

test('a season has its codes, the same every time, and another season has others', () => {
  expect(blindCodes('2025', 6)).toEqual(blindCodes('2025', 6));
  const perYear = Array.from({ length: 50 }, (_, year) => blindCodes(String(1990 + year), 6).join(' '));
  expect(new Set(perYear).size).toBe(50);
});

test('any figure may stand first, and all nine do about alike often', () => {
  const firsts = Array.from({ length: 150 }, (_, at) => blindCodes(`season ${at}`, 6)).flatMap((codes) =>
    codes.map((code) => code[0]),
  );
  const counts = [...'123456789'].map((figure) => firsts.filter((first) => first === figure).length);
  // 900 draws of nine figures: 100 each, with a standard deviation of 9.4; five of those either way.
  expect(Math.min(...counts)).toBeGreaterThan(53);
  expect(Math.max(...counts)).toBeLessThan(147);
});

test('200 can be had, and more are refused', () => {
  expect(new Set(blindCodes('many', 200).map(figuresOf)).size).toBe(200);
  expect(() => blindCodes('too many', 201)).toThrow(RangeError);
});
