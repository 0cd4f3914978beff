import { CholeskyDecomposition, Matrix, solve } from 'ml-matrix';
import type { SugarReading } from '../../src/ledger/rain-sugar/reading.ts';
import type { SeasonSetting } from '../simulated/season/setting.ts';

/** z(0.95) of printed normal tables. */
const Z = 1.645;

/**
 * Width of the 90 % range, °Brix per mm, of someone who reads the same fruits, knows what ripeness took from each and
 * the spread of mounds (with their blocks), days, fruits and meter, and not what a variety's sugar was in its season:
 * generalised least squares with V written out whole, coded otherwise than the code it is held against.
 */
export function slopeOracleWidth(readings: readonly SugarReading[], { levels, sugar }: SeasonSetting): number {
  const mound = levels.mound.brix ** 2 + levels.block.brix ** 2;
  const day = sugar.day_sd_brix ** 2;
  const fruit = levels.fruit.brix ** 2 + sugar.reading_sd_brix ** 2;
  const shared = (a: SugarReading, b: SugarReading): number =>
    (a.mound === b.mound ? mound : 0) + (a.picked_on === b.picked_on ? day : 0) + (a.key === b.key ? fruit : 0);
  const variance = new CholeskyDecomposition(new Matrix(readings.map((a) => readings.map((b) => shared(a, b)))));
  const cells = [...new Set(readings.map(({ season, variety }) => `${variety}/${season}`))];
  const design = new Matrix(
    readings.map(({ season, variety, rain_mm }) => [
      ...cells.map((cell) => (cell === `${variety}/${season}` ? 1 : 0)),
      rain_mm,
    ]),
  );
  const information = design.transpose().mmul(variance.solve(design));
  const last = Matrix.zeros(cells.length + 1, 1).set(cells.length, 0, 1);
  return 2 * Z * Math.sqrt(solve(information, last).get(cells.length, 0));
}
