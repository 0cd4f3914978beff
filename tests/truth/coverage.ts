import type { Judged } from './judged-garden.ts';

/** How often ranges held the truth, over gardens. Shares are of 1. */
export interface Coverage {
  readonly held: number;
  /** Standard error of `held`. Ranges of one garden share a spread, so the garden is the repeat, not the range. */
  readonly se: number;
  /** `held` of the variety or pair with the lowest. */
  readonly lowest: number;
  /** Mean width of the printed ranges over the mean width of the oracle's for the same figures. */
  readonly width_ratio: number;
  /** Share of figures without a range. */
  readonly abstained: number;
}

/** Each garden's ranges of one kind. Throws RangeError when not one range was printed. */
export function coverageOf(gardens: readonly (readonly Judged[])[]): Coverage {
  const all = gardens.flat();
  const printed = all.filter(({ interval }) => interval);
  if (printed.length === 0) throw new RangeError('invalid gardens: no range was printed');
  const shares = gardens.filter((ranges) => ranges.some(({ interval }) => interval)).map(heldShare);
  const sum = (of: (judged: Judged) => number): number => printed.reduce((total, one) => total + of(one), 0);
  const names = [...new Set(all.map((one) => one.of))];
  return {
    held: heldShare(printed),
    se: standardDeviation(shares) / Math.sqrt(shares.length),
    lowest: Math.min(...names.map((name) => heldShare(printed.filter((one) => one.of === name)))),
    width_ratio:
      sum(({ interval }) => (interval ? interval.high - interval.low : 0)) / sum(({ oracle_width }) => oracle_width),
    abstained: 1 - printed.length / all.length,
  };
}

/** Whether a printed range holds the truth. */
export const holds = ({ interval, truth }: Judged): boolean =>
  interval !== null && interval.low <= truth && truth <= interval.high;

/** Of the printed ones; 1 where there are none. */
function heldShare(ranges: readonly Judged[]): number {
  const printed = ranges.filter(({ interval }) => interval);
  return printed.length === 0 ? 1 : printed.filter(holds).length / printed.length;
}

function standardDeviation(values: readonly number[]): number {
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
}
