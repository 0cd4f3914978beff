import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  afford,
  levelBand,
  type PastYear,
  type ReplaySettings,
  replayTank,
} from '../../../src/ledger/water/tank-replay.ts';

const SEEDED = { seed: 20250812, numRuns: 150 };

/** 10 m² at a share of 1: ten litres each millimetre. */
const ROOF = { footprint_m2: 10, runoff_share: 1, first_flush_l: 0 };

const year = (label: string, wanted_l: readonly number[], rain: Readonly<Record<number, number>> = {}): PastYear => ({
  label,
  days: wanted_l.map((wanted, day) => ({ rain_mm: rain[day] ?? 0, wanted_l: wanted })),
});
const tens = (days: number): number[] => Array.from({ length: days }, () => 10);
const settings = (start_l: number, years: readonly PastYear[], more: Partial<ReplaySettings> = {}): ReplaySettings => ({
  tank: { holds_l: 200, dead_l: 0 },
  start_l,
  roof: ROOF,
  years,
  ...more,
});

describe('replayTank', () => {
  it('by hand: 50 litres and ten a day are gone after five days, but for rain', () => {
    const years = [year('2021', tens(7)), year('2022', tens(7), { 2: 3 }), year('2023', tens(7), { 5: 3 })];
    // 2022: three millimetres on the third day are thirty litres more, so eight days. 2023: they come on the day it is dry.
    expect(replayTank(settings(50, years))).toEqual({
      years: [
        { label: '2021', dry_day: 5 },
        { label: '2022', dry_day: null },
        { label: '2023', dry_day: 5 },
      ],
      dry: 2,
      of: 3,
    });
  });
  it('every year starts from the same litres, with the first flush to come', () => {
    const flushing = { ...ROOF, first_flush_l: 20 };
    // 10 litres, and 3 mm less the flush give 10: two days are watered, on the third nothing is left.
    const years = [year('a', tens(3), { 0: 3 }), year('b', tens(3), { 0: 3 })];
    const { years: found } = replayTank(settings(10, years, { roof: flushing }));
    expect(found.map(({ dry_day }) => dry_day)).toEqual([2, 2]);
  });
  it('litres below the tap are not counted on', () => {
    const tank = { holds_l: 200, dead_l: 30 };
    expect(replayTank(settings(50, [year('a', tens(5))], { tank })).years[0]?.dry_day).toBe(2);
  });
  it('no years are none of none', () => {
    expect(replayTank(settings(50, []))).toEqual({ years: [], dry: 0, of: 0 });
  });
});

describe('afford', () => {
  const dryTwice = (days: number, start_l: number): ReplaySettings =>
    settings(start_l, [year('a', tens(days)), year('b', tens(days))]);

  it('by hand: two weeks of 70 litres from 100 give up 20 litres a week', () => {
    expect(afford(dryTwice(14, 100))).toEqual({ less_l_week: 20, wanted_l_week: 70, dry: 0, of: 2 });
  });
  it('in whole cans of 9 litres that takes three cans', () => {
    expect(afford(dryTwice(14, 100), 9)?.less_l_week).toBe(27);
  });
  it('a last week of three days gives up three sevenths: 100 − 10 c / 7 is 70 at 21', () => {
    expect(afford(dryTwice(10, 70), 1)?.less_l_week).toBe(21);
    expect(afford(dryTwice(10, 70))?.less_l_week).toBe(25);
  });
  it('each day of a week gives up the same part, and a week that wants less than the cut gives up all', () => {
    // 70 on one day, 10 in the week after: 70 − c and nothing are 50 at 20, where the day before them had 10 to spare.
    const wanted = [0, 0, 70, 0, 0, 0, 0, 0, 10, 0, 0, 0, 0, 0];
    expect(afford(settings(50, [year('a', wanted), year('b', wanted)]))).toMatchObject({ less_l_week: 20, dry: 0 });
  });
  it('one dry year is borne', () => {
    const years = [year('a', tens(14)), year('b', tens(14), { 3: 10 }), year('c', tens(14), { 4: 10 })];
    expect(afford(settings(100, years))).toEqual({ less_l_week: 0, wanted_l_week: 70, dry: 1, of: 3 });
  });
  it('and two are not', () => {
    const years = [year('a', tens(14)), year('b', tens(14), { 3: 2 }), year('c', tens(14), { 4: 10 })];
    // Year b has 120 litres for 140: ten a week less. Year a stays dry with 120 from 100.
    expect(afford(settings(100, years))).toEqual({ less_l_week: 10, wanted_l_week: 70, dry: 1, of: 3 });
  });
  it('a cut that leaves nothing in the fullest week is no help', () => {
    expect(afford(dryTwice(14, 4))).toBeNull();
    expect(afford(dryTwice(14, 10))).toMatchObject({ less_l_week: 65 });
  });
  it('weeks run from the first day: two days in a row at the seam of two weeks are no week of their own', () => {
    const wanted = [0, 0, 0, 0, 0, 0, 70, 70, 0, 0, 0, 0, 0, 0];
    expect(afford(settings(4, [year('a', wanted), year('b', wanted)]))).toBeNull();
  });
  it('a last week of few days counts as what seven such days would want', () => {
    // 90 from 40: three sevenths of the cut are 50 at 116 2/3.
    const wanted = [0, 0, 0, 0, 0, 0, 0, 30, 30, 30];
    expect(afford(settings(40, [year('a', wanted), year('b', wanted)]))?.less_l_week).toBe(120);
  });
  it('a plan that wants nothing may stand, and no year is no answer', () => {
    expect(afford(settings(0, [year('a', [0, 0])]))).toEqual({ less_l_week: 0, wanted_l_week: 0, dry: 0, of: 1 });
    expect(afford(settings(50, []))).toBeNull();
    expect(afford(settings(50, [year('a', [])]))).toBeNull();
  });

  const mixed = (max: number): fc.Arbitrary<number> =>
    fc.integer({ min: 0, max: 997 }).map((part) => (max * part) / 997);
  const aDay = fc.record({
    rain_mm: fc.oneof(fc.constant(0), fc.constant(0), fc.constant(0), mixed(6)),
    wanted_l: fc.oneof(fc.constant(0), mixed(40)),
  });
  const plans = fc
    .array(fc.array(aDay, { minLength: 8, maxLength: 24 }), { minLength: 2, maxLength: 6 })
    .map((years) => years.map((days, index) => ({ label: `${2000 + index}`, days })));

  /** The plan cut by hand: each week by its own, written otherwise than the program does. */
  function cut({ label, days }: PastYear, less_l_week: number): PastYear {
    const weeks = Array.from({ length: Math.ceil(days.length / 7) }, (_, week) => days.slice(7 * week, 7 * week + 7));
    return {
      label,
      days: weeks.flatMap((week) => {
        const wanted = week.reduce((total, { wanted_l }) => total + wanted_l, 0);
        const kept = wanted === 0 ? 0 : Math.max(0, wanted - (less_l_week / 7) * week.length) / wanted;
        return week.map((day) => ({ ...day, wanted_l: day.wanted_l * kept }));
      }),
    };
  }

  it('it is the least cut: a search from nothing up finds the same', () => {
    const seen = { none: 0, some: 0, null: 0 };
    fc.assert(
      fc.property(plans, mixed(200), (years, start_l) => {
        const asked = settings(start_l, years, { roof: { ...ROOF, first_flush_l: 15 } });
        const dryWith = (less: number): number =>
          replayTank({ ...asked, years: years.map((one) => cut(one, less)) }).dry;
        const found = afford(asked);
        if (found === null) {
          expect(dryWith(5 * Math.ceil((60 * 7) / 5))).toBe(0);
          seen.null += 1;
          return;
        }
        expect(found.dry).toBeLessThanOrEqual(1);
        expect(dryWith(found.less_l_week)).toBe(found.dry);
        for (let less = 0; less < found.less_l_week; less += 5) expect(dryWith(less)).toBeGreaterThan(1);
        seen[found.less_l_week === 0 ? 'none' : 'some'] += 1;
      }),
      SEEDED,
    );
    expect(Math.min(seen.none, seen.some)).toBeGreaterThan(20);
  });

  it('a step that is none throws', () => {
    expect(() => afford(dryTwice(14, 100), 0)).toThrow('invalid step_l:');
    expect(() => afford(dryTwice(14, 100), Number.NaN)).toThrow(RangeError);
  });
});

describe('levelBand', () => {
  it('by hand: the lowest, the middle and the highest of three years, at the end of each day', () => {
    const years = [year('c', tens(2), { 0: 30 }), year('a', tens(2)), year('b', tens(2), { 0: 2 })];
    // a: 40, 30. b: 60, 50. c: 350 spills to 200 before the ten are drawn: 190, 180.
    expect(levelBand(settings(50, years))).toEqual([
      { lowest_l: 40, middle_l: 60, highest_l: 190 },
      { lowest_l: 30, middle_l: 50, highest_l: 180 },
    ]);
  });
  it('between two years the middle lies half way, and a day that one year lacks has no band', () => {
    const years = [year('a', tens(3)), year('b', tens(2), { 0: 2 })];
    expect(levelBand(settings(50, years))).toEqual([
      { lowest_l: 40, middle_l: 50, highest_l: 60 },
      { lowest_l: 30, middle_l: 40, highest_l: 50 },
    ]);
    expect(levelBand(settings(50, []))).toEqual([]);
  });
});
