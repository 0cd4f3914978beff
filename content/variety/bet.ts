import { OF } from '../../src/ledger/trial/claim.ts';
import type { CropTrial, TraitRow, TrialTrait } from '../../src/ledger/trial/crop-trial.ts';

/** From so many of 20 on a difference is worth a sentence: about 3 in 4. */
const BOLD = 15;

/** What the records would have us bet: one variety better than another in one way, the bolder way round. */
export interface Bet {
  readonly trait: string;
  readonly more: string;
  readonly less: string;
  readonly of_twenty: number;
  /** Fruits or mounds of the variety that is not the yardstick. */
  readonly n: number;
  readonly of: 'fruit' | 'mound';
}

/** The bets of a trait, the boldest first; of equals those on what beats the yardstick, then the alphabet’s order. */
export function betsOf({ yardstick }: CropTrial, { trait, rows }: TrialTrait): Bet[] {
  const name = yardstick?.variety.name ?? '';
  return rows
    .flatMap((row) => betOf(trait, row, name) ?? [])
    .sort((a, b) => b.of_twenty - a.of_twenty || Number(a.more === name) - Number(b.more === name));
}

function betOf(trait: TrialTrait['trait'], { variety, numbers, better }: TraitRow, yardstick: string): Bet | null {
  if (better.value === null) return null;
  const other = OF - better.value;
  const bold = Math.max(better.value, other);
  if (bold < BOLD) return null;
  const [more, less] = better.value >= other ? [variety.name, yardstick] : [yardstick, variety.name];
  return { trait: trait.id, more, less, of_twenty: bold, n: numbers.n, of: trait.of };
}
