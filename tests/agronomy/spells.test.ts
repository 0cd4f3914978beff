import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { longestRun, runsOf } from '../../src/agronomy/spells.ts';
import { SEATTLE } from '../published/seattle-weather/daily.ts';
import { YEARS } from '../published/seattle-weather/sums.ts';

type Days = readonly (boolean | null)[];

/** A day a letter: + has the property, - has it not, ? nobody looked. */
const days = (letters: string): Days => [...letters].map((letter) => (letter === '?' ? null : letter === '+'));

const run = (first: number, length: number, open = false) => ({ first, length, open });

describe('runsOf, by hand', () => {
  it.each([
    ['', []],
    ['-', []],
    ['?', []],
    ['+', [run(0, 1)]],
    ['+++', [run(0, 3)]],
    ['-++-+--+++', [run(1, 2), run(4, 1), run(7, 3)]],
    ['?++-', [run(1, 2, true)]],
    ['-++?', [run(1, 2, true)]],
    ['?+?', [run(1, 1, true)]],
    ['++?+', [run(0, 2, true), run(3, 1, true)]],
    ['+-?-+', [run(0, 1), run(4, 1)]],
    ['??-++-??', [run(3, 2)]],
  ])('%s', (letters, expected) => {
    expect(runsOf(days(letters))).toEqual(expected);
  });
});

describe('longestRun, by hand', () => {
  it.each([
    ['', null, 0],
    ['---', null, 0],
    ['-?-', null, 1],
    ['-++-++-', run(1, 2), 2],
    ['-++-+++', run(4, 3), 3],
    // Equal in length, the earliest stands, though the later may be longer.
    ['++-++?-', run(0, 2), 3],
    ['+++-?++-', run(0, 3), 3],
    ['++?++', run(0, 2, true), 5],
    ['+++-????', run(0, 3), 4],
  ])('%s', (letters, longest, at_most) => {
    expect(longestRun(days(letters))).toEqual({ run: longest, at_most });
  });
});

describe('four years of Seattle', () => {
  it.each(YEARS)('the longest dry spell of $year, as R finds it', ({ year, dry_spell }) => {
    const days = SEATTLE.filter((day) => day.date.startsWith(year));
    const { run: longest, at_most } = longestRun(days.map((day) => day.rain_mm === 0));
    expect(longest).toMatchObject({ length: dry_spell.days, open: false });
    expect(days[longest?.first ?? -1]?.date).toBe(dry_spell.from);
    expect(at_most).toBe(dry_spell.days);
  });
  it('one reading lost in the spell leaves two parts, each at least as long as seen', () => {
    const from = SEATTLE.findIndex((day) => day.date === '2012-07-23');
    const dry = SEATTLE.slice(from - 1, from + 49).map((day, index) => (index === 21 ? null : day.rain_mm === 0));
    expect(runsOf(dry)).toEqual([run(1, 20, true), run(22, 27, true)]);
    expect(longestRun(dry)).toEqual({ run: run(22, 27, true), at_most: 48 });
  });
});

describe('any series', () => {
  const series = fc.array(fc.constantFrom(true, true, true, false, null), { maxLength: 40, size: 'max' });
  const SEEDED = { seed: 20250812, numRuns: 300 };

  it('has exactly its true days in runs that cannot be made longer', () => {
    fc.assert(
      fc.property(series, (days) => {
        const covered = runsOf(days).flatMap(({ first, length }) => Array.from({ length }, (_, step) => first + step));
        expect(covered).toEqual(days.flatMap((day, place) => (day === true ? [place] : [])));
        for (const { first, length } of runsOf(days))
          expect([days[first - 1], days[first + length]]).not.toContain(true);
      }),
      SEEDED,
    );
  });

  it('has the same runs read backwards, and open ones only where a gap touches', () => {
    let opened = 0;
    fc.assert(
      fc.property(series, (days) => {
        const turned = runsOf(days.toReversed()).toReversed();
        expect(turned.map((one) => ({ ...one, first: days.length - one.first - one.length }))).toEqual(runsOf(days));
        opened += runsOf(days).filter((one) => one.open).length;
        expect(runsOf(days.map((day) => day ?? false)).some((one) => one.open)).toBe(false);
      }),
      SEEDED,
    );
    expect(opened).toBeGreaterThan(SEEDED.numRuns);
  });

  it('has no longer run than it could have, whatever the unknown days were', () => {
    fc.assert(
      fc.property(series, fc.array(fc.boolean(), { minLength: 40, maxLength: 40 }), (days, truth) => {
        const known = days.map((day, place) => day ?? truth[place] ?? false);
        const length = longestRun(known).run?.length ?? 0;
        const { run: seen, at_most } = longestRun(days);
        expect(length).toBeGreaterThanOrEqual(seen?.length ?? 0);
        expect(length).toBeLessThanOrEqual(at_most);
      }),
      SEEDED,
    );
  });
});
