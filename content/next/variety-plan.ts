import type { Facts } from '../../src/book/chapter.ts';
import { lastPlanted } from '../../src/garden/last-planted.ts';

/** What the records say of growing a variety again: names, in the alphabet's order. */
export interface VarietyPlan {
  /** Planted in two seasons and more, and in the last one. */
  readonly known: readonly string[];
  /** Planted in one season only: one summer says little. */
  readonly once: readonly string[];
  /** Written down and never planted. */
  readonly untried: readonly string[];
  readonly yardsticks: readonly string[];
}

export function varietyPlan({ garden }: Facts): VarietyPlan {
  const { varieties, seasons } = garden;
  const last = lastPlanted(garden);
  const seasonsOf = (id: string): number =>
    seasons.filter(({ plantings }) => plantings.some(({ variety }) => variety?.id === id)).length;
  const isGrown = (id: string): boolean => last?.plantings.some(({ variety }) => variety?.id === id) ?? false;
  const named = (holds: (id: string) => boolean): string[] =>
    varieties.filter(({ id }) => holds(id)).map(({ name }) => name);
  const yardsticks = varieties.filter(({ yardstick }) => yardstick === true).map(({ name }) => name);
  return {
    known: named((id) => seasonsOf(id) > 1 && isGrown(id)).filter((name) => !yardsticks.includes(name)),
    once: named((id) => seasonsOf(id) === 1 && isGrown(id)).filter((name) => !yardsticks.includes(name)),
    untried: named((id) => seasonsOf(id) === 0),
    yardsticks,
  };
}
