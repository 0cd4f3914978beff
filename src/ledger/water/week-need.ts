import {
  type Climate,
  type Coefficients,
  curveInClimate,
  type Stage,
  type StageLengths,
} from '../../agronomy/crop-coefficient.ts';
import { evaporationCut, type Mulch, mulchedBasal } from '../../agronomy/mulched-coefficient.ts';
import { readilyAvailable, shareOnDay } from '../../agronomy/soil-water.ts';
import { addDays, type Day } from '../../day.ts';
import { basalIn, type WaterTraits, wettedShare } from './crop-water.ts';
import type { Spread } from './spot-ground.ts';
import type { ThirstRecord } from './thirst-record.ts';
import { type ThirstyWeeks, thirstyWeeks } from './thirsty-weeks.ts';
import type { UsualGround } from './usual-ground.ts';

/** What a spot wants in one kind of week, rain not taken off, and how long its ground lasts. */
export interface WeekNeed {
  readonly kind: 'cool' | 'usual' | 'hot';
  readonly l_per_week: number;
  /** Days until the watered ground alone has given what it can without harm; null without the soil's figures. */
  readonly bowl_days: Spread | null;
  /** The same for all the ground of its roots, as after a soaking rain. */
  readonly ground_days: Spread | null;
}

export interface StageNeed {
  readonly stage: Stage;
  readonly first: Day;
  readonly last: Day;
  readonly weeks: ThirstyWeeks;
  readonly needs: readonly WeekNeed[];
}

export interface Growing {
  readonly traits: WaterTraits;
  readonly lengths: StageLengths;
  readonly planted: Day;
  readonly climate: Climate;
  readonly ground: UsualGround;
  readonly mulch: Mulch;
}

const WEEK = 7;

/**
 * Need by stage: what the leaves drink, Kcb · ETo on their ground, and what wet ground loses beside them, (Kc - Kcb) ·
 * ETo on the watered ground, less what a mulch saves. In stages that change the coefficient is the middle of its ends.
 * Stages in which fewer than five years were read are left out.
 */
export function weekNeeds(growing: Growing, thirst: ThirstRecord): StageNeed[] {
  const { traits, lengths, planted, climate, mulch } = growing;
  const kcb = mulchedBasal(basalIn(traits, climate), mulch);
  const { kc_initial, kc_middle, kc_end, height_m } = traits;
  const kc = curveInClimate({ initial: kc_initial, middle: kc_middle, end: kc_end }, climate, height_m);
  const ends: readonly [Stage, number, keyof Coefficients, keyof Coefficients][] = [
    ['initial', lengths.initial_days, 'initial', 'initial'],
    ['development', lengths.development_days, 'initial', 'middle'],
    ['middle', lengths.middle_days, 'middle', 'middle'],
    ['late', lengths.late_days, 'middle', 'end'],
  ];
  let first = planted;
  return ends.flatMap(([stage, days, from, to]) => {
    const [starts, last] = [first, addDays(first, days - 1)];
    first = addDays(first, days);
    const weeks = days === 0 ? null : thirstyWeeks(thirst, starts, last);
    if (!weeks) return [];
    const leaves = (kcb[from] + kcb[to]) / 2;
    const soil = Math.max((kc[from] + kc[to]) / 2 - leaves, 0) * (1 - evaporationCut(mulch));
    const needs = (['cool', 'usual', 'hot'] as const).map((kind) =>
      need(growing, kind, weeks[`${kind}_mm`], leaves, soil),
    );
    return [{ stage, first: starts, last, weeks, needs }];
  });
}

function need(
  { ground, traits }: Growing,
  kind: WeekNeed['kind'],
  eto_mm: number,
  leaves: number,
  soil: number,
): WeekNeed {
  const watered_m2 = ground.root_m2 * wettedShare(ground);
  const l_per_week = eto_mm * (leaves * ground.canopy_m2 + soil * watered_m2);
  const share = shareOnDay(traits.depletion, (leaves * eto_mm) / WEEK);
  const lasting = (area_m2: number): Spread | null => {
    const store = ground.available_mm;
    const days = (taw_mm: number): number => (readilyAvailable(taw_mm, share) * area_m2 * WEEK) / l_per_week;
    return store && l_per_week > 0
      ? { low: days(store.low), middle: days(store.middle), high: days(store.high) }
      : null;
  };
  return { kind, l_per_week, bowl_days: lasting(watered_m2), ground_days: lasting(ground.root_m2) };
}
