import { printedSlope } from '../../src/ledger/rain-sugar/printed-slope.ts';
import type { SeasonSetting } from '../simulated/season/setting.ts';
import type { Judged } from './judged-garden.ts';
import { type SimulatedReadings, simulatedReadings } from './simulated-readings.ts';
import { slopeOracleWidth } from './sugar-oracle.ts';

/** What the book prints of some readings beside the truth, in °Brix per mm. */
export const judgedReadings = ({ readings, slope }: SimulatedReadings, setting: SeasonSetting): Judged => {
  const interval = printedSlope(readings).fit?.interval ?? null;
  return { of: 'slope', interval, truth: slope, oracle_width: interval ? slopeOracleWidth(readings, setting) : 0 };
};

/** A garden of a seed, from its texts to the printed slope. */
export const judgedSlope = (setting: SeasonSetting, seed: number): Judged =>
  judgedReadings(simulatedReadings(setting, seed), setting);
