import type { Chance } from '../chance.ts';
import { normal } from '../normal.ts';
import type { Year } from './year.ts';

/** Storms split fruits: the chance is logistic, and what one storm does it does to all fruits that are near ripe. */
export interface StormRule {
  /** A day of this much rain is a storm; the days of such rain that follow at once belong to it. */
  readonly from_mm: number;
  /** Standard deviation of a storm's own effect, in logits. */
  readonly sd: number;
  /** Of an average storm on a just ripe fruit of usual mass, in logits. */
  readonly usual: number;
  readonly by_log_mass: number;
  readonly by_ripeness: number;
  /** Ripeness, the logarithm of heat over that of just ripe, from which a fruit can split. */
  readonly near: number;
}

export interface Storm {
  readonly first: number;
  readonly last: number;
  /** Rain of all its days, mm. */
  readonly rain_mm: number;
  /** In logits. */
  readonly effect: number;
}

/** The storms of a year that begin within two days of it, the later one left out. */
export function stormsOf({ days }: Year, from: number, until: number, rule: StormRule, chance: Chance): Storm[] {
  const storms: Storm[] = [];
  for (const { day, rain_mm } of days) {
    if (rain_mm < rule.from_mm) continue;
    const before = storms.at(-1);
    if (before?.last === day - 1)
      storms[storms.length - 1] = { ...before, last: day, rain_mm: before.rain_mm + rain_mm };
    else storms.push({ first: day, last: day, rain_mm, effect: rule.sd * normal(chance) });
  }
  return storms.filter(({ first }) => first >= from && first < until);
}

/** The chance that a storm splits a fruit; `mass` is the logarithm of its mass over the usual. */
export function splitChance(effect: number, ripeness: number, mass: number, rule: StormRule): number {
  if (ripeness < rule.near) return 0;
  const logit = rule.usual + effect + rule.by_log_mass * mass + rule.by_ripeness * ripeness;
  return 1 / (1 + Math.exp(-logit));
}
