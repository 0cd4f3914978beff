/** What the tests of mixed models share: fits that must not be refused, and invented trials. */
import fc from 'fast-check';
import { fitMixed, type MixedData, type MixedFit } from '../../../src/statistics/mixed-model/fit-mixed.ts';

/** The fit; fails the test when it was refused. */
export function mixed(data: MixedData): MixedFit {
  const fit = fitMixed(data);
  if ('cannot' in fit) throw new Error(`refused: ${JSON.stringify(fit.cannot)}`);
  return fit;
}

/** A constant column. */
export const constant = (n: number) => ({ name: 'constant', values: new Array<number>(n).fill(1) });

/** Groups of values as observations with one random factor. */
export function grouped(groups: readonly (readonly number[])[]): MixedData {
  const y = groups.flat();
  const levels = groups.flatMap((values, at) => values.map(() => `g${at}`));
  return { y, fixed: [constant(y.length)], random: [{ name: 'group', levels }] };
}

const observation = fc.record({
  day: fc.integer({ min: 0, max: 7 }),
  mound: fc.integer({ min: 0, max: 5 }),
  rest: fc.integer({ min: -30, max: 30 }),
  age: fc.integer({ min: 0, max: 9 }),
});

/**
 * Mounds picked on days, with rain a property of the day: 25 to 60 values in tenths, some without
 * any spread of days or of mounds.
 */
export const trial: fc.Arbitrary<MixedData> = fc
  .record({
    rain: fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 8, maxLength: 8 }),
    day: fc.array(fc.integer({ min: -25, max: 25 }), { minLength: 8, maxLength: 8 }),
    mound: fc.array(fc.integer({ min: -25, max: 25 }), { minLength: 6, maxLength: 6 }),
    dayMatters: fc.boolean(),
    moundMatters: fc.boolean(),
    rows: fc.array(observation, { minLength: 25, maxLength: 60 }),
  })
  .map(({ rain, day, mound, dayMatters, moundMatters, rows }) => ({
    y: rows.map((one) => {
      const ofDay = dayMatters ? (day[one.day] ?? 0) : 0;
      const ofMound = moundMatters ? (mound[one.mound] ?? 0) : 0;
      return (80 + ofDay + ofMound + one.rest) / 10;
    }),
    fixed: [
      constant(rows.length),
      { name: 'age', values: rows.map((one) => one.age) },
      { name: 'rain', values: rows.map((one) => rain[one.day] ?? 0) },
    ],
    random: [
      { name: 'day', levels: rows.map((one) => `day ${one.day}`) },
      { name: 'mound', levels: rows.map((one) => `mound ${one.mound}`) },
    ],
  }));
