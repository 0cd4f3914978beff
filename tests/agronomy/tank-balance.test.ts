import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runTank, stepTank, type Tank, type TankDay } from '../../src/agronomy/tank-balance.ts';

const SEEDED = { seed: 20250812, numRuns: 500 };
const TANK: Tank = { holds_l: 1000, dead_l: 0 };

/** Even over the whole span, which fast-check’s own fractions are not, and in no round numbers. */
const litres = (max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 99_991 }).map((part) => (max * part) / 99_991);
const runs = fc
  .record({ holds_l: litres(4950).map((above) => 50 + above), dead: litres(1), start: litres(1) })
  .chain(({ holds_l, dead, start }) =>
    fc.record({
      tank: fc.constant({ holds_l, dead_l: dead * 0.3 * holds_l }),
      start_l: fc.constant(start * holds_l),
      days: fc.array(
        fc.record({
          inflow_l: fc.oneof(fc.constant(0), litres(0.5 * holds_l), litres(2 * holds_l)),
          wanted_l: fc.oneof(fc.constant(0), litres(0.3 * holds_l)),
        }),
        { maxLength: 60 },
      ),
    }),
  );

/**
 * Yield after spillage and before it, as Fewkes and Butler 2000 write them and Plumbing Africa, January 2019, repeats
 * them (read): Y the yield, V the volume in store, D the demand, Q the runoff, S the capacity.
 */
function published(rule: 'after' | 'before', S: number, V0: number, days: readonly TankDay[]) {
  let V = V0;
  return days.map(({ inflow_l: Q, wanted_l: D }) => {
    const Y = rule === 'after' ? Math.min(D, V) : Math.min(D, V + Q);
    V = rule === 'after' ? Math.min(V + Q - Y, S - Y) : Math.min(V + Q - Y, S);
    return { Y, V };
  });
}

describe('by hand', () => {
  it('a constant demand empties a tank in S/d days', () => {
    const days = Array.from({ length: 30 }, () => ({ inflow_l: 0, wanted_l: 50 }));
    const { steps, dry_day } = runTank(TANK, 1000, days);
    expect(dry_day).toBe(20);
    expect(steps[19]).toEqual({ end_l: 0, drawn_l: 50, short_l: 0, overflow_l: 0 });
    expect(steps[20]).toEqual({ end_l: 0, drawn_l: 0, short_l: 50, overflow_l: 0 });
  });
  it('tenths that the machine cannot hold exactly do not dry a tank a day early', () => {
    const days = Array.from({ length: 3 }, () => ({ inflow_l: 0, wanted_l: 0.1 }));
    expect(0.3 - 0.1 - 0.1).toBeLessThan(0.1);
    expect(runTank(TANK, 0.3, days).dry_day).toBeNull();
    expect(runTank(TANK, 0.3, [...days, { inflow_l: 0, wanted_l: 0.1 }]).dry_day).toBe(3);
  });
  it('a storm fills it and the rest runs over', () => {
    const storm = { inflow_l: 900, wanted_l: 0 };
    expect(stepTank(TANK, 300, storm)).toEqual({ end_l: 1000, drawn_l: 0, short_l: 0, overflow_l: 200 });
  });
  it('the day’s rain spills before anything is drawn', () => {
    const step = stepTank(TANK, 300, { inflow_l: 900, wanted_l: 100 });
    expect(step).toEqual({ end_l: 900, drawn_l: 100, short_l: 0, overflow_l: 200 });
  });
  it('and no day drinks its own rain', () => {
    const step = stepTank(TANK, 30, { inflow_l: 900, wanted_l: 100 });
    expect(step).toEqual({ end_l: 900, drawn_l: 30, short_l: 70, overflow_l: 0 });
  });
  it('what stands below the tap stays', () => {
    const tank = { holds_l: 1000, dead_l: 100 };
    expect(stepTank(tank, 130, { inflow_l: 0, wanted_l: 50 })).toMatchObject({ end_l: 100, drawn_l: 30, short_l: 20 });
    expect(stepTank(tank, 60, { inflow_l: 20, wanted_l: 50 })).toMatchObject({ end_l: 80, drawn_l: 0, short_l: 50 });
  });
  it('a day on which nothing is wanted is never dry', () => {
    expect(runTank(TANK, 0, [{ inflow_l: 0, wanted_l: 0 }])).toMatchObject({ dry_day: null });
    expect(runTank(TANK, 0, [])).toEqual({ steps: [], dry_day: null });
  });
});

describe('whatever comes', () => {
  it('inflow = drawn + overflow + change, to a thousand-millionth of a litre', () => {
    fc.assert(
      fc.property(runs, ({ tank, start_l, days }) => {
        let level_l = start_l;
        for (const [day, { end_l, drawn_l, short_l, overflow_l }] of runTank(tank, start_l, days).steps.entries()) {
          const { inflow_l, wanted_l } = days[day] ?? { inflow_l: Number.NaN, wanted_l: Number.NaN };
          expect(Math.abs(inflow_l - (drawn_l + overflow_l + (end_l - level_l)))).toBeLessThanOrEqual(1e-9);
          expect(Math.abs(wanted_l - drawn_l - short_l)).toBeLessThanOrEqual(1e-6);
          expect(Math.min(end_l, drawn_l, short_l, overflow_l)).toBeGreaterThanOrEqual(0);
          expect(end_l).toBeLessThanOrEqual(tank.holds_l);
          expect(end_l).toBeGreaterThanOrEqual(Math.min(level_l, tank.dead_l) - 1e-9);
          level_l = end_l;
        }
      }),
      SEEDED,
    );
  });
  it('it is the rule as published, where the tap is at the floor', () => {
    fc.assert(
      fc.property(runs, ({ tank, start_l, days }) => {
        const rule = published('after', tank.holds_l, start_l, days);
        for (const [day, { end_l, drawn_l }] of runTank({ ...tank, dead_l: 0 }, start_l, days).steps.entries()) {
          expect(Math.abs(drawn_l - (rule[day]?.Y ?? Number.NaN))).toBeLessThanOrEqual(1e-8);
          expect(Math.abs(end_l - (rule[day]?.V ?? Number.NaN))).toBeLessThanOrEqual(1e-8);
        }
      }),
      SEEDED,
    );
  });
  it('and the careful one of the two: it never runs dry later than the other', () => {
    let earlier = 0;
    fc.assert(
      fc.property(runs, ({ tank, start_l, days }) => {
        const other = published('before', tank.holds_l, start_l, days);
        const found = other.findIndex(({ Y }, day) => (days[day]?.wanted_l ?? 0) - Y > 1e-6);
        const theirs = found === -1 ? days.length : found;
        const ours = runTank({ ...tank, dead_l: 0 }, start_l, days).dry_day ?? days.length;
        expect(ours).toBeLessThanOrEqual(theirs);
        if (ours < theirs) earlier += 1;
      }),
      SEEDED,
    );
    expect(earlier).toBeGreaterThan(20);
  });
});

describe('what cannot be is refused', () => {
  const day = { inflow_l: 0, wanted_l: 0 };
  it.each([
    ['holds_l', () => stepTank({ holds_l: 0, dead_l: 0 }, 0, day)],
    ['dead_l', () => stepTank({ holds_l: 10, dead_l: 11 }, 0, day)],
    ['dead_l', () => stepTank({ holds_l: 10, dead_l: -1 }, 0, day)],
    ['start_l', () => stepTank(TANK, 1001, day)],
    ['start_l', () => stepTank(TANK, -1, day)],
    ['inflow_l', () => stepTank(TANK, 0, { ...day, inflow_l: -1 })],
    ['inflow_l', () => stepTank(TANK, 0, { ...day, inflow_l: Number.NaN })],
    ['wanted_l', () => stepTank(TANK, 0, { ...day, wanted_l: -1 })],
    ['wanted_l', () => runTank(TANK, 0, [day, { ...day, wanted_l: Number.POSITIVE_INFINITY }])],
  ])('%s', (name, attempt) => {
    expect(attempt).toThrow(RangeError);
    expect(attempt).toThrow(`invalid ${name}:`);
  });
});
