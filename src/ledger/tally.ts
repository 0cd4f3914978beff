/** A sum over fruits of which only some were told: how much, from how many, of how many. */
export interface Tally {
  /** Over the fruits told. */
  readonly sum: number;
  readonly told: number;
  readonly of: number;
}

export const NOTHING: Tally = { sum: 0, told: 0, of: 0 };

export const isComplete = ({ told, of }: Tally): boolean => told === of;

export const addTallies = (tallies: readonly Tally[]): Tally =>
  tallies.reduce((a, b) => ({ sum: a.sum + b.sum, told: a.told + b.told, of: a.of + b.of }), NOTHING);
