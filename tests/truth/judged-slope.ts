import type { Interval } from '../../src/figure.ts';
import { printedSlope } from '../../src/ledger/rain-sugar/printed-slope.ts';
import type { SeasonSetting } from '../simulated/season/setting.ts';
import { type SimulatedReadings, simulatedReadings } from './simulated-readings.ts';

/** The printed range of one simulated garden's slope beside the true one, in °Brix per mm. */
export interface JudgedSlope {
  readonly truth: number;
  /** Null where the book gives no number. */
  readonly interval: Interval | null;
}

/** What the book prints of some readings beside the truth. */
export const judged = ({ readings, slope }: SimulatedReadings): JudgedSlope => ({
  truth: slope,
  interval: printedSlope(readings).fit?.interval ?? null,
});

/** A garden of a seed, from its texts to the printed slope. */
export const judgedSlope = (setting: SeasonSetting, seed: number): JudgedSlope =>
  judged(simulatedReadings(setting, seed));

export const slopeHolds = ({ truth, interval }: JudgedSlope): boolean =>
  interval !== null && interval.low <= truth && truth <= interval.high;
