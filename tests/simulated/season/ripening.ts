import type { Chance } from '../chance.ts';
import { normal } from '../normal.ts';
import { dayReached, type Year } from './year.ts';

/** How heat makes a fruit ripe. Ratios are of heats since set: of prime and of over to just ripe. */
export interface Ripening {
  readonly base_c: number;
  readonly prime_ratio: { readonly mean: number; readonly sd: number };
  readonly over_ratio: { readonly mean: number; readonly sd: number };
  /** Standard deviation of the logarithm of a fruit's steps from just ripe to prime and from prime to over. */
  readonly step_log_sd: number;
}

/** A variety's ratios. */
export interface Ratios {
  readonly prime: number;
  readonly over: number;
}

export type State = 'unripe' | 'just-ripe' | 'prime' | 'over';
export const STATES: readonly State[] = ['unripe', 'just-ripe', 'prime', 'over'];

/** Something at each of the three turns of a fruit's life: heats since set, or days. */
export interface Stages<T> {
  readonly just_ripe: T;
  readonly prime: T;
  readonly over: T;
}

const LEAST_STEP = 0.02;

export function ratiosOf({ prime_ratio, over_ratio }: Ripening, chance: Chance): Ratios {
  const prime = Math.max(1 + LEAST_STEP, prime_ratio.mean + prime_ratio.sd * normal(chance));
  return { prime, over: Math.max(prime + LEAST_STEP, over_ratio.mean + over_ratio.sd * normal(chance)) };
}

/** The heats at which a fruit turns, °C days since set. Steps are lognormal about the variety's, so they keep their order. */
export function stagesOf(log_heat: number, ratios: Ratios, { step_log_sd }: Ripening, chance: Chance): Stages<number> {
  const just_ripe = Math.exp(log_heat);
  const prime = just_ripe * (1 + (ratios.prime - 1) * Math.exp(step_log_sd * normal(chance)));
  return {
    just_ripe,
    prime,
    over: prime + just_ripe * (ratios.over - ratios.prime) * Math.exp(step_log_sd * normal(chance)),
  };
}

/** The first day in each state; null for one the year does not bring. */
export const turningDays = (stages: Stages<number>, set: number, year: Year): Stages<number | null> => ({
  just_ripe: dayReached(year, set, stages.just_ripe),
  prime: dayReached(year, set, stages.prime),
  over: dayReached(year, set, stages.over),
});

export function stateAt(heat: number, { just_ripe, prime, over }: Stages<number>): State {
  if (heat < just_ripe) return 'unripe';
  if (heat < prime) return 'just-ripe';
  return heat < over ? 'prime' : 'over';
}

/** Logarithm of a heat over that of just ripe: below zero unripe. Floored, for there is no logarithm of no heat. */
export const ripenessAt = (heat: number, { just_ripe }: Stages<number>): number =>
  Math.log(Math.max(heat, 1) / just_ripe);
