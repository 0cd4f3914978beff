/** The days that raw manure in the ground keeps a fruit from being picked. */
import type { Dated } from '../dated.ts';
import { addDays, type Day } from '../day.ts';
import { naturally } from '../natural-order.ts';
import { type MaterialId, RAW_MANURES } from '../records/material-id.ts';
import type { Planting } from './garden.ts';

/** Days from working in to picking. 7 CFR 205.203(c)(1)(ii) and (iii), the rule for organic growers in the USA. */
export const LEAST_DAYS = { fruit_on_ground: 120, fruit_above_ground: 90 };

/**
 * The first day on which fruit may safely be picked after raw manure was worked into the soil: "not less than 120 days"
 * later where the fruit lies on the ground, 90 where it hangs clear of soil and splash. Whoever doubts takes 120.
 * For raw manure only, dried included; composted and heat-treated manure has no such wait. Any day.
 */
export const earliestSafePicking = (applied: Day, onGround: boolean): Day => addDays(applied, leastDays(onGround));

const leastDays = (onGround: boolean): number =>
  onGround ? LEAST_DAYS.fruit_on_ground : LEAST_DAYS.fruit_above_ground;

/** What was put on the ground, where and when: the part of a feeding that the clock asks for. */
export interface Given {
  readonly given_on: Dated;
  readonly material: MaterialId;
  /** Null for the whole garden. */
  readonly spots: readonly string[] | null;
}

/** The wait that one entry of raw manure sets some spots. */
export interface ManureClock {
  readonly given: Dated;
  readonly material: MaterialId;
  readonly days: number;
  /** Counted from the last day it may have been given; null where that is not known. */
  readonly earliest: Day | null;
  /** Spots that wait so many days; null for the whole garden. */
  readonly spots: readonly string[] | null;
}

/** Neither composted nor heated: the clock runs. */
export const isRaw = ({ material }: Pick<Given, 'material'>): boolean => RAW_MANURES.includes(material);

/** A planting of no known variety may lie on the ground. */
const onGround = ({ variety }: Pick<Planting, 'variety'>): boolean => variety?.crop.fruit_on_ground ?? true;

/** The first safe day of one planting after one entry; null where the day it was given is not known. */
export const safeDayOf = (given: Given, planting: Pick<Planting, 'variety'>): Day | null =>
  given.given_on.last && earliestSafePicking(given.given_on.last, onGround(planting));

/** Days that one planting waits. */
export const waitOf = (planting: Pick<Planting, 'variety'>): number => leastDays(onGround(planting));

/**
 * Every entry of raw or dried manure with the wait it sets, in the order of the entries. Spots whose fruit all hangs
 * clear of the ground wait the shorter time and stand apart; a spot with nothing planted yet waits the longer.
 */
export const manureClocks = (given: readonly Given[], plantings: readonly Planting[]): ManureClock[] =>
  given.filter(isRaw).flatMap((entry) => {
    const { given_on, material, spots } = entry;
    const all = spots ?? [...new Set(plantings.map(({ spot }) => spot.id))].sort(naturally);
    const waits = (id: string): number => {
      const here = plantings.filter(({ spot }) => spot.id === id).map(waitOf);
      return Math.max(...(here.length > 0 ? here : [LEAST_DAYS.fruit_on_ground]));
    };
    const groups = [...new Set(all.length > 0 ? all.map(waits) : [LEAST_DAYS.fruit_on_ground])].sort((a, b) => b - a);
    return groups.map((days) => ({
      given: given_on,
      material,
      days,
      earliest: given_on.last && addDays(given_on.last, days),
      spots: spots === null && groups.length === 1 ? null : all.filter((id) => waits(id) === days),
    }));
  });
