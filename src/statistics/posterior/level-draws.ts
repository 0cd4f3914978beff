/** Draws of what levels are worth, built from the parts of a posterior, for the sentences that are told of them. */
import type { Vector } from '../linear/cholesky.ts';
import type { FactorPosterior, Posterior } from './posterior.ts';

export interface LevelDraws {
  readonly level: string;
  /** One value a draw, in the same order of draws for every level; in the values' unit. */
  readonly draws: Vector;
}

/** The effects of a factor's levels, as deviations. Throws RangeError for an unknown factor. */
export function effectsOf(posterior: Posterior, factor: string): LevelDraws[] {
  return factorOf(posterior, factor).levels.map(({ level, draws }) => ({ level, draws }));
}

/**
 * The same with the fixed part added, at given values of its columns; columns left out count as 0. Throws RangeError
 * for an unknown column.
 */
export function atColumns(
  levels: readonly LevelDraws[],
  { coefficients }: Posterior,
  at: Readonly<Record<string, number>>,
): LevelDraws[] {
  const parts = Object.entries(at).map(([name, weight]) => {
    const column = coefficients.find((one) => one.name === name);
    if (!column) throw new RangeError(`invalid column: ${name} is not in this posterior`);
    return { weight, draws: column.draws };
  });
  return levels.map(({ level, draws }) => ({
    level,
    draws: draws.map((value, draw) =>
      parts.reduce((sum, one) => sum + one.weight * (one.draws[draw] as number), value),
    ),
  }));
}

/**
 * The same with, for each level, the effect of a level of another factor added: what a variety was worth in one summer
 * is its own effect and that of the variety in that summer. Throws RangeError for an unknown factor or level.
 */
export function withFactor(
  levels: readonly LevelDraws[],
  posterior: Posterior,
  factor: string,
  levelFor: (level: string) => string,
): LevelDraws[] {
  const found = new Map(factorOf(posterior, factor).levels.map((one) => [one.level, one.draws]));
  return levels.map(({ level, draws }) => {
    const own = found.get(levelFor(level));
    if (!own) throw new RangeError(`invalid level: ${levelFor(level)} of ${factor} is not in this posterior`);
    return { level, draws: draws.map((value, draw) => value + (own[draw] as number)) };
  });
}

function factorOf({ factors }: Posterior, name: string): FactorPosterior {
  const found = factors.find((one) => one.name === name);
  if (!found) throw new RangeError(`invalid factor: ${name} is not in this posterior`);
  return found;
}
