import fc from 'fast-check';
import { expect, test } from 'vitest';
import { certainlyAfter, parseDated } from '../src/dated.ts';

test('the five forms of a date', () => {
  expect(parseDated('2025-08-12')).toMatchObject({ kind: 'day', first: '2025-08-12', last: '2025-08-12' });
  expect(parseDated('about 2025-08-12')).toMatchObject({ kind: 'about', first: '2025-08-12' });
  expect(parseDated('2025-08-10..2025-08-14')).toMatchObject({ kind: 'span', first: '2025-08-10', last: '2025-08-14' });
  expect(parseDated('2024-02')).toMatchObject({ kind: 'month', first: '2024-02-01', last: '2024-02-29' });
  expect(parseDated('unknown')).toMatchObject({ kind: 'unknown', first: null, last: null });
});

test('what is none of them', () => {
  for (const text of [
    '',
    '2025',
    'about 2025-08',
    '2025-08-14..2025-08-10',
    '2025-08-10..',
    '2025-08-10..2025-08-11..2025-08-12',
    '2025-13',
    'soon',
    'About 2025-08-12',
    'about unknown',
    'about 2025-08-10..2025-08-12',
    '2025-08..2025-09',
    '..2025-08-10',
    '2025-08-10...2025-08-12',
    '2025-02-29',
    '2025-00',
    ' 2025-08-12',
  ]) {
    expect(parseDated(text), text).toBeNull();
  }
});

test('an order is wrong exactly when no day of the earlier is on or before a day of the later', () => {
  // By trying out every pair of days the two may mean.
  const day = fc.integer({ min: 1, max: 28 }).map((date) => `2025-08-${String(date).padStart(2, '0')}`);
  const span = fc.tuple(day, day).map(([a, b]) => (a < b ? `${a}..${b}` : `${b}..${a}`));
  const daysOf = ({ first, last }: { first: string; last: string }): number[] =>
    Array.from({ length: 28 }, (_, index) => index + 1).filter((date) => {
      const text = `2025-08-${String(date).padStart(2, '0')}`;
      return first <= text && text <= last;
    });
  fc.assert(
    fc.property(fc.oneof(day, span), fc.oneof(day, span), (earlier, later) => {
      const [one, other] = [parseDated(earlier), parseDated(later)];
      if (!one?.first || !other?.first) throw new Error('invalid test date');
      const canBeRight = daysOf(one).some((a) => daysOf(other).some((b) => a <= b));
      expect(certainlyAfter(one, other)).toBe(!canBeRight);
    }),
  );
});

test('an order is wrong only when no reading of the two dates is right', () => {
  const wrong = (earlier: string, later: string): boolean => certainlyAfter(parseDated(earlier), parseDated(later));
  expect(wrong('2025-08-12', '2025-08-11')).toBe(true);
  expect(wrong('2025-08-12', '2025-08-12')).toBe(false);
  expect(wrong('2025-08-12', '2025-08-10..2025-08-14')).toBe(false);
  expect(wrong('2025-08-15', '2025-08-10..2025-08-14')).toBe(true);
  expect(wrong('2025-09', '2025-08')).toBe(true);
  expect(wrong('about 2025-08-12', '2025-08-01')).toBe(false);
  expect(wrong('unknown', '2025-08-01')).toBe(false);
});
