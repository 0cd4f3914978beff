import { describe, expect, it, test } from 'vitest';
import { heldOutFruits } from '../../../src/statistics/signs/held-out.ts';
import { type CutFruit, ripeModel } from '../../../src/statistics/signs/ripe-chance.ts';
import { signScore, usualSigns } from '../../../src/statistics/signs/sign-score.ts';
import oracle from '../../published/sign-chances/oracle.json' with { type: 'json' };

const LEVEL = 0.9;
const fruit = (over: Partial<CutFruit>): CutFruit => ({
  season: 'one',
  variety: 'a',
  days_since_set: 38,
  signs: [true, false, true],
  answer: true,
  ...over,
});
const garden = (oracle.cases[0]?.cut ?? []) as CutFruit[];

describe.each(oracle.cases)('weighted draws from the exact posterior: $name', (one) => {
  const model = ripeModel(one.cut as CutFruit[]);
  /** What src/statistics/signs/ripe-chance.ts promises. */
  const [close, end] = one.cut.length >= 24 ? [0.003, 0.02] : [0.01, 0.04];
  it.each(one.asked)('$variety, $days_since_set days, $signs', ({ chance, low, high, ...asked }) => {
    const found = model.of(asked, one.level);
    expect(Math.abs(found.chance - chance), `chance ${found.chance} of ${chance}`).toBeLessThan(close);
    expect(Math.abs(found.interval.low - low), `low ${found.interval.low} of ${low}`).toBeLessThan(end);
    expect(Math.abs(found.interval.high - high), `high ${found.interval.high} of ${high}`).toBeLessThan(end);
  });
});

describe('signs together', () => {
  it('all looked for is the plain count; one looked for speaks for more than itself and less than all', () => {
    const usual = [0.5, 0.5, 0.5, 0.5];
    const shown = (n: number) => signScore([n > 0, n > 1, n > 2, n > 3], usual);
    expect([0, 1, 2, 3, 4].map(shown)).toEqual([-0.5, -0.25, 0, 0.25, 0.5]);
    const alone = signScore([true, null, null, null], usual);
    // (1 + 3 × 0.3) × ½ / 4.
    expect(alone).toBeCloseTo(0.2375, 12);
    expect(alone).toBeGreaterThan(0.125);
    expect(alone).toBeLessThan(shown(4));
  });
  it('a sign not looked for is not a no', () => {
    const usual = [0.5, 0.5];
    expect(signScore([true, null], usual)).toBeGreaterThan(signScore([true, false], usual));
    expect(signScore([null, null], usual)).toBe(0);
    expect(signScore([false, null], usual)).toBe(-signScore([true, null], usual));
  });
  it('a sign that shows on nearly every fruit says little shown and much absent', () => {
    const usual = [0.9, 0.5];
    expect(signScore([true, null], usual)).toBeLessThan(signScore([null, true], usual));
    expect(signScore([false, null], usual)).toBeLessThan(signScore([null, false], usual));
  });
  it('usual shares, drawn to a half by one fruit', () => {
    expect(
      usualSigns([
        [true, null],
        [true, null],
        [false, null],
      ]),
    ).toEqual([2.5 / 4, 0.5]);
  });
});

describe('chances', () => {
  const model = ripeModel(garden);
  const asked = { days_since_set: 39, signs: [true, false, true, false], variety: 'variety 1' };
  it('rise with age and with signs', () => {
    expect(model.slopes.age).toBeGreaterThan(0);
    expect(model.slopes.signs).toBeGreaterThan(0);
    const byAge = [30, 34, 38, 42, 46].map((days_since_set) => model.of({ ...asked, days_since_set }, LEVEL).chance);
    expect(byAge).toEqual([...byAge].sort((a, b) => a - b));
    const bySigns = [0, 1, 2, 3, 4].map(
      (n) => model.of({ ...asked, signs: [n > 0, n > 1, n > 2, n > 3] }, LEVEL).chance,
    );
    expect(bySigns).toEqual([...bySigns].sort((a, b) => a - b));
  });
  it('of a fruit of unknown age or variety are less sure', () => {
    const width = (one: { interval: { low: number; high: number } }) => one.interval.high - one.interval.low;
    const known = model.of(asked, LEVEL);
    expect(width(model.of({ ...asked, days_since_set: null }, LEVEL))).toBeGreaterThan(width(known));
    const old = { ...asked, days_since_set: 44 };
    const logit = (p: number) => Math.log(p / (1 - p));
    const spread = (one: { interval: { low: number; high: number } }) =>
      logit(one.interval.high) - logit(one.interval.low);
    expect(spread(model.of({ ...old, variety: null }, LEVEL))).toBeGreaterThan(spread(model.of(old, LEVEL)));
  });
  it('do not depend on the order or the names', () => {
    const renamed = [...garden]
      .reverse()
      .map((one) => ({ ...one, variety: `x ${one.variety}`, season: `x ${one.season}` }));
    const other = ripeModel(renamed).of({ ...asked, variety: `x ${asked.variety}` }, LEVEL);
    expect(other.chance).toBeCloseTo(model.of(asked, LEVEL).chance, 8);
  });
  it('turn over when the answers do', () => {
    const turned = ripeModel(garden.map((one) => ({ ...one, answer: !one.answer })));
    expect(turned.of(asked, LEVEL).chance).toBeCloseTo(1 - model.of(asked, LEVEL).chance, 6);
  });
  it('from one fruit hardly leave a half', () => {
    const { chance, interval } = ripeModel([fruit({})]).of(fruit({ season: 'two' }), LEVEL);
    expect(chance).toBeGreaterThan(0.5);
    expect(chance).toBeLessThan(0.75);
    expect(interval.low).toBeLessThan(0.2);
    expect(interval.high).toBeGreaterThan(0.9);
  });
  it('all of one age: no number goes missing', () => {
    const { chance } = ripeModel([fruit({}), fruit({ answer: false })]).of(fruit({}), LEVEL);
    expect(chance).toBeCloseTo(0.5, 6);
  });
});

describe('a season left out', () => {
  it('is left out whole: its own answers change nothing of its own chances', () => {
    const turned = garden.map((one) => (one.season === 'season 2' ? { ...one, answer: !one.answer } : one));
    const [before, after] = [heldOutFruits(garden), heldOutFruits(turned)];
    if ('cannot' in before || 'cannot' in after) throw new Error('refused');
    const of = (list: typeof before, season: string) =>
      list.filter((one) => one.fruit.season === season).map(({ chance }) => chance);
    expect(before).toHaveLength(garden.length);
    expect(before.map((one) => one.fruit)).toEqual(garden);
    expect(of(after, 'season 2')).toEqual(of(before, 'season 2'));
    expect(of(after, 'season 1')).not.toEqual(of(before, 'season 1'));
  });
  it('is what the rest says', () => {
    const found = heldOutFruits(garden);
    if ('cannot' in found) throw new Error('refused');
    const rest = ripeModel(garden.filter(({ season }) => season !== 'season 1'));
    const [first] = found;
    expect(first?.chance).toBe(rest.of(first?.fruit ?? fruit({}), LEVEL).chance);
  });
  it('one season alone is refused', () => {
    expect(heldOutFruits([fruit({}), fruit({})])).toEqual({ cannot: { code: 'one-season' } });
  });
});

test.each([
  ['fruits', () => ripeModel([])],
  ['days since set', () => ripeModel([fruit({ days_since_set: 0 })])],
  ['signs', () => ripeModel([fruit({}), fruit({ signs: [true] })])],
  ['level', () => ripeModel([fruit({})]).of(fruit({}), 1)],
])('impossible %s are refused', (name, attempt) => {
  expect(attempt).toThrow(RangeError);
  expect(attempt).toThrow(`invalid ${name}:`);
});
