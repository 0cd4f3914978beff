import { expect, test } from 'vitest';
import { parseDated } from '../src/dated.ts';
import type { Day } from '../src/day.ts';
import { createFormat } from '../src/format.ts';

const british = createFormat({ units: 'metric', locale: 'en-GB' });
const american = createFormat({ units: 'us', locale: 'en-US' });

test('sums lose their decimal from ten on, rates keep it', () => {
  expect(british.amount(9.44, 'kg')).toBe('9.4\u00a0kg');
  expect(british.amount(146.7, 'kg')).toBe('147\u00a0kg');
  expect(british.digits(12.34, 'kg_per_plant')).toBe('12.3');
  expect(british.digits(1234.4, 'fruits')).toBe('1,234');
});

test('SI comes out in the units of the garden', () => {
  // 1 lb = 0.45359237 kg and 1 in = 25.4 mm, exact (NIST SP 811, from memory).
  expect(american.amount(0.45359237 * 5, 'kg')).toBe('5.0\u00a0lb');
  expect(american.amount(25.4 * 3, 'mm')).toBe('3.0\u00a0in');
  expect(american.amount(30, 'c')).toBe('86\u00a0°F');
  expect(american.digits(1, 'kg_per_m2')).toBe('0.2');
});

test('a sum that rounds to ten is written like ten', () => {
  expect(british.digits(9.94, 'kg')).toBe('9.9');
  expect(british.digits(9.96, 'kg')).toBe('10');
});

test('both ends of a range carry the same decimals', () => {
  expect(british.range({ low: 3, high: 12.66, level: 0.9 }, 'kg_per_plant')).toBe('3.0 to 12.7');
});

test('a difference has its sign in words, and none when it rounds to nothing', () => {
  expect(british.difference(-2.04, 'kg_per_plant')).toBe('2.0 less');
  expect(british.difference(1.6, 'kg_per_plant')).toBe('1.6 more');
  expect(british.difference(0.04, 'kg_per_plant')).toBe('the same');
});

test('a difference of temperatures takes the scale of the degree, not its zero', () => {
  // 1 K is 1.8 °F (NIST SP 811, from memory).
  expect(british.difference(5, 'c')).toBe('5 more');
  expect(american.difference(5, 'c')).toBe('9 more');
  expect(american.difference(-10, 'c')).toBe('18 less');
  expect(american.difference(2 * 0.45359237, 'kg')).toBe('2.0 more');
});

test('a day is the same day in every time zone', () => {
  const zone = process.env.TZ;
  try {
    for (const far of ['Pacific/Kiritimati', 'Pacific/Pago_Pago', 'UTC']) {
      process.env.TZ = far;
      const { dayYear } = createFormat({ units: 'metric', locale: 'en-GB' });
      expect(new Date(0).getTimezoneOffset() === 0, far).toBe(far === 'UTC');
      expect(
        ['2025-01-01', '2025-12-31', '2024-02-29'].map((day) => dayYear(day as Day)),
        far,
      ).toEqual(['1 Jan 2025', '31 Dec 2025', '29 Feb 2024']);
    }
  } finally {
    if (zone === undefined) delete process.env.TZ;
    else process.env.TZ = zone;
  }
});

test('months are words, in the order of the place', () => {
  expect(british.dayYear('2025-08-07' as Day)).toBe('7 Aug 2025');
  expect(american.dayYear('2025-08-07' as Day)).toBe('Aug 7, 2025');
  const told = (text: string): string =>
    british.dated(parseDated(text) ?? { kind: 'unknown', first: null, last: null, text });
  expect(told('about 2025-08-07')).toBe('about 7 Aug 2025');
  expect(told('2025-08')).toBe('Aug 2025');
  expect(told('2025-08-07..2025-09-01')).toBe('7 Aug 2025 to 1 Sept 2025');
  expect(told('unknown')).toBe('not known');
  expect(american.day('2025-09-01' as Day)).toBe('Sep 1');
});

test('a minus is a minus, not a hyphen', () => {
  expect(british.amount(-3.6, 'c')).toBe('\u22123.6\u00a0°C');
});

test('what rounds to nothing has no sign', () => {
  expect(british.decimal(-0.04, 1)).toBe('0.0');
});
