import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type DualCoefficient,
  type RootZone,
  stepAlong,
  type WaterDay,
  type WaterState,
  type WaterStep,
} from '../../src/agronomy/root-zone.ts';
import type { WettingOrder } from '../../src/agronomy/wetting-order.ts';

const SEEDED = { seed: 20250812, numRuns: 100 };
const DAYS = 120;

/** Evenly over the range; doubles of their own would crowd near nothing. */
const amount = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 10_000 }).map((step) => min + ((max - min) * step) / 10_000);
const sometimes = (max: number): fc.Arbitrary<number> =>
  fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: amount(0, max) });
const order = fc.constantFrom<WettingOrder>('early', 'late');
const zone = (adjust_p: fc.Arbitrary<boolean>): fc.Arbitrary<RootZone> =>
  fc.record({ taw_mm: amount(10, 250), depletion_share: amount(0.2, 0.7), adjust_p });

/** A garden's ground and the crop's coefficients, which stay the same through its days but for the cover. */
const ground = fc.record({
  kcb: amount(0, 1.15),
  above_kcb: amount(0.05, 1.1),
  tew_mm: amount(6, 29),
  rew_part: amount(0.1, 0.9),
  evaporation_kept: amount(0, 1),
  wetted_share: amount(0.05, 1),
  drip: fc.boolean(),
});
const dualOf = (one: typeof ground extends fc.Arbitrary<infer G> ? G : never, cover: number): DualCoefficient => ({
  kind: 'dual',
  kcb: one.kcb,
  kc_max: one.kcb + one.above_kcb,
  cover,
  soil: { tew_mm: one.tew_mm, rew_mm: one.rew_part * one.tew_mm },
  evaporation_kept: one.evaporation_kept,
  wetted_share: one.wetted_share,
  drip: one.drip,
});

const sky = fc.record({
  eto_mm: amount(0, 9),
  rain_mm: sometimes(40),
  watering_mm: sometimes(60),
  canopy_ratio: amount(0.2, 12),
});
const singleDays = fc.array(
  fc.tuple(sky, amount(0, 1.3)).map(([day, kc]): WaterDay => ({ ...day, coefficient: { kind: 'single', kc } })),
  { minLength: DAYS, maxLength: DAYS },
);
const dualDays = fc
  .tuple(ground, fc.array(fc.tuple(sky, amount(0, 0.99)), { minLength: DAYS, maxLength: DAYS }))
  .map(([one, days]) => days.map(([day, cover]): WaterDay => ({ ...day, coefficient: dualOf(one, cover) })));

const startOf = (days: readonly WaterDay[], { taw_mm }: RootZone, root_part: number, top_part: number): WaterState => {
  const first = days[0]?.coefficient;
  const top =
    first?.kind === 'dual'
      ? { depletion_mm: top_part * first.soil.tew_mm, wetted_share: first.wetted_share, drip: first.drip }
      : null;
  return { root_mm: root_part * taw_mm, top };
};
const part = amount(0, 1);

/** What does not add up in a season, by day; nothing when all is told. */
function faults(zone: RootZone, start: WaterState, days: readonly WaterDay[], steps: readonly WaterStep[]): string[] {
  return steps.flatMap((step, index) => {
    const day = days[index];
    const before = index === 0 ? start : steps[index - 1]?.end;
    if (!day || !before) return [`no day ${index}`];
    const checks = { ...rootChecks(zone, before, day, step), ...topChecks(before, day, step) };
    return Object.entries(checks).flatMap(([name, holds]) => (holds ? [] : [`${name} on day ${index}`]));
  });
}

const same = (one: number, other: number, off = 1e-9): boolean => Math.abs(one - other) <= off;

function rootChecks({ taw_mm }: RootZone, before: WaterState, day: WaterDay, step: WaterStep): Record<string, boolean> {
  const { end, ks, demand_mm, etc_mm, percolation_mm, ignored_rain_mm, unmet_mm, below_wilting_mm } = step;
  const came_mm = day.rain_mm - ignored_rain_mm + day.watering_mm + below_wilting_mm;
  const thirst_mm = demand_mm - (step.evaporation_mm ?? 0);
  const depths = [etc_mm, percolation_mm, ignored_rain_mm, unmet_mm, below_wilting_mm];
  return {
    balance: same(end.root_mm - before.root_mm, etc_mm + percolation_mm - came_mm),
    parts: step.top
      ? same((step.transpiration_mm ?? 0) + (step.evaporation_mm ?? 0), etc_mm)
      : step.transpiration_mm === null && step.evaporation_mm === null,
    demand: same(demand_mm - etc_mm, (1 - ks) * thirst_mm + unmet_mm),
    ignored: [0, day.rain_mm].includes(ignored_rain_mm) && ignored_rain_mm <= 0.2 * day.eto_mm,
    depths: Math.min(...depths) >= -1e-12 && Number.isFinite(Math.max(...depths)),
    root: end.root_mm >= 0 && end.root_mm <= taw_mm,
    stress: ks >= 0 && ks <= 1,
  };
}

function topChecks(before: WaterState, day: WaterDay, step: WaterStep): Record<string, boolean> {
  const { top, end } = step;
  if (!top || !before.top || !end.top || day.coefficient.kind === 'single') return {};
  const rain_mm = day.rain_mm - step.ignored_rain_mm;
  const came_mm = rain_mm + (day.watering_mm > 0 ? day.watering_mm / end.top.wetted_share : 0);
  const went_mm = top.evaporation_mm / top.exposed_share + top.through_mm;
  return {
    // A little water on a twentieth of the ground is deep there: relative to what came.
    top_balance: same(end.top.depletion_mm - before.top.depletion_mm, went_mm - came_mm, 1e-9 * Math.max(1, came_mm)),
    top_depth: end.top.depletion_mm >= 0 && end.top.depletion_mm <= day.coefficient.soil.tew_mm,
    asked: same(top.ke * day.eto_mm * day.coefficient.evaporation_kept, top.evaporation_mm + top.cut_mm),
    evaporation: top.evaporation_mm >= 0 && top.cut_mm >= 0,
  };
}

describe('a season of 120 days, both orders', () => {
  it.each([
    ['single', singleDays],
    ['dual', dualDays],
  ])('%s: every millimetre is told', (_, season) => {
    const met = { stress: 0, unmet: 0, through: 0, ignored: 0 };
    fc.assert(
      fc.property(zone(fc.boolean()), season, part, part, order, (zone, days, root, top, when) => {
        const start = startOf(days, zone, root, top);
        const steps = stepAlong(zone, start, days, when);
        expect(steps).toHaveLength(DAYS);
        expect(faults(zone, start, days, steps)).toEqual([]);
        for (const step of steps) {
          met.stress += step.ks < 1 ? 1 : 0;
          met.unmet += step.unmet_mm > 0 ? 1 : 0;
          met.through += step.percolation_mm > 0 ? 1 : 0;
          met.ignored += step.ignored_rain_mm > 0 ? 1 : 0;
        }
      }),
      SEEDED,
    );
    expect(Math.min(...Object.values(met))).toBeGreaterThan(10);
  });
});

/** The same days with so much more rain. */
const rainier = (days: readonly WaterDay[], extra_mm: readonly number[]): WaterDay[] =>
  days.map((day, index) => ({ ...day, rain_mm: day.rain_mm + (extra_mm[index] ?? 0) }));
const extraRain = fc.array(sometimes(15), { minLength: DAYS, maxLength: DAYS });

describe('more rain', () => {
  it('never leaves the root zone drier at the end of a day, with a single coefficient', () => {
    const met = { wetter: 0, beyond: 0 };
    fc.assert(
      fc.property(zone(fc.boolean()), singleDays, extraRain, part, order, (zone, days, extra_mm, root, when) => {
        const start = startOf(days, zone, root, 0);
        const [dry, wet] = [days, rainier(days, extra_mm)].map((season) => stepAlong(zone, start, season, when));
        let worst_mm = 0;
        for (const [index, step] of (wet ?? []).entries()) {
          const other = dry?.[index];
          if (!other) throw new Error('no day');
          worst_mm = Math.max(worst_mm, step.end.root_mm - other.end.root_mm);
          met.wetter += step.end.root_mm < other.end.root_mm - 0.1 ? 1 : 0;
          // A day's thirst above the water beyond p, where a step of a day could overshoot: the draw's end holds it.
          met.beyond += other.demand_mm > (1 - other.depletion_share) * zone.taw_mm ? 1 : 0;
        }
        expect(worst_mm).toBeLessThanOrEqual(1e-9);
      }),
      SEEDED,
    );
    expect(Math.min(met.wetter, met.beyond)).toBeGreaterThan(1000);
  });
  it('leaves it drier, with a dual coefficient, by no more than the extra evaporation of the day and what was so before', () => {
    const met = { wetter: 0, drier: 0 };
    // The share p is held: let it follow the day, and a day of less evaporation also puts the plants' stress off.
    fc.assert(
      fc.property(
        zone(fc.constant(false)),
        dualDays,
        extraRain,
        part,
        part,
        order,
        (zone, days, extra_mm, root, top, when) => {
          const start = startOf(days, zone, root, top);
          const [dry, wet] = [days, rainier(days, extra_mm)].map((season) => stepAlong(zone, start, season, when));
          let before_mm = 0;
          let worst_mm = 0;
          for (const [index, step] of (wet ?? []).entries()) {
            const other = dry?.[index];
            if (!other) throw new Error('no day');
            const extra_mm = Math.max((step.evaporation_mm ?? 0) - (other.evaporation_mm ?? 0), 0);
            const drier_mm = step.end.root_mm - other.end.root_mm;
            worst_mm = Math.max(worst_mm, drier_mm - before_mm - extra_mm);
            before_mm = Math.max(drier_mm, 0);
            met.wetter += step.end.root_mm < other.end.root_mm - 0.1 ? 1 : 0;
            met.drier += step.end.root_mm > other.end.root_mm + 0.1 ? 1 : 0;
          }
          expect(worst_mm).toBeLessThanOrEqual(1e-9);
        },
      ),
      SEEDED,
    );
    expect(met.wetter).toBeGreaterThan(1000);
    expect(met.drier).toBeGreaterThan(0);
  });
});

describe('a mulch', () => {
  const dryDays = (
    covers: readonly number[],
    one: Parameters<typeof dualOf>[0],
    eto_mm: readonly number[],
  ): WaterDay[] =>
    covers.map((cover, index) => ({
      eto_mm: eto_mm[index] ?? 0,
      rain_mm: 0,
      watering_mm: 0,
      canopy_ratio: 1,
      coefficient: dualOf(one, cover),
    }));
  const totals = (steps: readonly WaterStep[]): number[] => {
    let sum = 0;
    return steps.map((step) => {
      sum += step.evaporation_mm ?? 0;
      return sum;
    });
  };
  const run = (days: readonly WaterDay[], zone: RootZone, when: WettingOrder): number[] => {
    const first = days[0]?.coefficient;
    if (first?.kind !== 'dual') throw new Error('no days');
    const top = { depletion_mm: 0, wetted_share: first.wetted_share, drip: first.drip };
    return totals(stepAlong(zone, { root_mm: 0, top }, days, when));
  };

  it('never raises what the soil has lost since it was wetted, while the leaves do not draw back', () => {
    const met = { less: 0 };
    fc.assert(
      fc.property(
        zone(fc.boolean()),
        ground,
        fc.array(fc.tuple(amount(0, 0.99), amount(0, 9)), { minLength: 40, maxLength: 40 }),
        part,
        order,
        (zone, one, days, kept, when) => {
          const covers = days.map(([cover]) => cover).sort((a, b) => a - b);
          const eto_mm = days.map(([, eto]) => eto);
          const bare = run(dryDays(covers, one, eto_mm), zone, when);
          const mulched = { ...one, evaporation_kept: one.evaporation_kept * kept };
          for (const [index, sum] of run(dryDays(covers, mulched, eto_mm), zone, when).entries()) {
            expect(sum).toBeLessThanOrEqual((bare[index] ?? Number.NaN) + 1e-9);
            met.less += sum < (bare[index] ?? 0) - 0.1 ? 1 : 0;
          }
        },
      ),
      SEEDED,
    );
    expect(met.less).toBeGreaterThan(1000);
  });
  it('may raise it when leaves draw back: what it saved meets more open ground', () => {
    const one = {
      kcb: 0.15,
      above_kcb: 1.05,
      tew_mm: 20,
      rew_part: 0.4,
      evaporation_kept: 1,
      wetted_share: 1,
      drip: false,
    };
    const covers = [0.9, 0.9, ...Array.from({ length: 40 }, () => 0)];
    const eto_mm = covers.map(() => 5);
    const zone: RootZone = { taw_mm: 200, depletion_share: 0.4, adjust_p: false };
    const bare = run(dryDays(covers, one, eto_mm), zone, 'early');
    const mulched = run(dryDays(covers, { ...one, evaporation_kept: 0.5 }, eto_mm), zone, 'early');
    expect(mulched[1]).toBeLessThan(bare[1] ?? 0);
    expect(mulched[41]).toBeGreaterThan(bare[41] ?? Number.NaN);
  });
});
