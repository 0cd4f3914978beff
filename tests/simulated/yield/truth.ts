import type { Mound } from '../design.ts';

/** A mound as nobody can know it: what it bears per plant on average over seasons like this one, and how far it strays. */
export interface TrueMound extends Mound {
  /** Variety's mean plus what its block adds, in the measure's unit per plant. */
  readonly expected: number;
  /** Standard deviation of the measure per plant. */
  readonly sd: number;
  /** What it bore this season, all plants together: hundredths of a kg, or fruits. */
  readonly bore: number;
}

/** What the comparison of a garden's varieties ought to find, in the measure's unit per plant set. */
export interface Truth {
  /** By variety id: averaged over the blocks of this garden, each weighing the same, wherever the variety stood. */
  readonly means: Readonly<Record<string, number>>;
  readonly mounds: readonly TrueMound[];
}

/** The first variety's true mean minus the second's. Throws RangeError for an unknown variety. */
export function trueDifference({ means }: Truth, a: string, b: string): number {
  const [one, other] = [means[a], means[b]];
  if (one === undefined || other === undefined) throw new RangeError(`invalid pair: ${a}, ${b}`);
  return one - other;
}
