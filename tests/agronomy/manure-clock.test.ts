import { Temporal } from 'temporal-polyfill';
import { expect, it } from 'vitest';
import { earliestSafePicking } from '../../src/agronomy/manure-clock.ts';
import { addDays, type Day, dayOf } from '../../src/day.ts';

/** Electronic Code of Federal Regulations, 7 CFR 205.203(c)(1)(ii) and (iii), read in a copy of 2026. */
const WAIT = { touches_soil: 120, does_not: 90 };

it.each([
  // 29 days of April, 31 of May, 30 of June and 30 of July.
  ['2025-04-01', '2025-07-30', '2025-06-30'],
  // Over a leap day: 28 of January... 29 of February, and 31 of March.
  ['2024-01-31', '2024-05-30', '2024-04-30'],
  ['2023-01-31', '2023-05-31', '2023-05-01'],
  ['2025-10-15', '2026-02-12', '2026-01-13'],
])('worked in on %s: fruit on the ground from %s, off it from %s', (applied, ground, above) => {
  expect(earliestSafePicking(applied as Day, true)).toBe(ground);
  expect(earliestSafePicking(applied as Day, false)).toBe(above);
});

it('waits as long as the rule says, counted by Temporal, on every day of four years', () => {
  for (let step = 0; step < 4 * 365; step += 1) {
    const applied = addDays(dayOf(2023, 1, 1), step);
    const plain = Temporal.PlainDate.from(applied);
    expect(earliestSafePicking(applied, true)).toBe(plain.add({ days: WAIT.touches_soil }).toString());
    expect(earliestSafePicking(applied, false)).toBe(plain.add({ days: WAIT.does_not }).toString());
  }
});
