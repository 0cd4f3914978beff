import type { Coverage } from './coverage.ts';

/** A kind of garden by name, and whether what the ranges suppose is so in it. */
export interface JudgedSetting {
  readonly name: string;
  readonly model: 'right' | 'broken';
}

/** Shares of 1 that 90 % ranges may cover: near nine in ten where the model is right, not far below where it is broken. */
export interface Limits {
  readonly right: { readonly low: number; readonly high: number };
  readonly broken: { readonly low: number; readonly high: number };
}

export const YIELD_LIMITS: Limits = { right: { low: 0.87, high: 0.95 }, broken: { low: 0.85, high: 1 } };
/** Wider: mounds and picking days both have to be guessed at from a dozen each. */
export const SLOPE_LIMITS: Limits = { right: { low: 0.85, high: 0.95 }, broken: { low: 0.83, high: 1 } };

export const isWithin = (limits: Limits, { model }: JudgedSetting, { held }: Coverage): boolean =>
  held >= limits[model].low && held <= limits[model].high;

const WIDTHS = [56, 8, 8, 13, 8, 7, 9, 9];

export const tableHead = ({ right, broken }: Limits): string =>
  [
    'Shares of printed 90 % ranges that hold the truth, in %, with standard error between gardens;',
    'lowest: of the variety or pair worst served; width: mean width over that of one who knows each spread;',
    `no range: figures printed without one. A right model has to stay in ${percent(right.low, 0)} to ${percent(right.high, 0)} %, a broken one above ${percent(broken.low, 0)} %.`,
    'held is an average: where spreads differ it hides ranges too wide for the steady variety and too narrow for the',
    'unsteady one, which lowest shows.',
    '',
    row(['setting', 'model', 'gardens', 'figure', 'held', 'se', 'lowest', 'width', 'no range', '']),
  ].join('\n');

/** One line of the table: all ranges of one figure in one setting. */
export const tableRow = (
  limits: Limits,
  setting: JudgedSetting,
  gardens: number,
  figure: string,
  coverage: Coverage,
): string =>
  row([
    setting.name,
    setting.model,
    String(gardens),
    figure,
    percent(coverage.held),
    percent(coverage.se, 2),
    percent(coverage.lowest),
    coverage.width_ratio.toFixed(2),
    percent(coverage.abstained),
    isWithin(limits, setting, coverage) ? '' : 'OUTSIDE',
  ]);

const percent = (share: number, digits = 1): string => (100 * share).toFixed(digits);

function row(cells: readonly string[]): string {
  return cells
    .map((cell, index) => (index < 4 ? cell.padEnd(WIDTHS[index] ?? 0) : cell.padStart(WIDTHS[index] ?? 10)))
    .join('')
    .trimEnd();
}
