import type { YieldSetting } from '../simulated/yield/setting.ts';
import type { Coverage } from './coverage.ts';

/** What 90 % ranges may cover: near nine in ten where the model is right, not far below where it is broken. */
export const LIMITS = { right: { low: 0.87, high: 0.95 }, broken: { low: 0.85, high: 1 } } as const;

export const isWithin = ({ model }: YieldSetting, { held }: Coverage): boolean =>
  held >= LIMITS[model].low && held <= LIMITS[model].high;

const WIDTHS = [29, 8, 8, 13, 8, 7, 9, 9];

export const TABLE_HEAD = [
  'Shares of printed 90 % ranges that hold the truth, in %, with standard error between gardens;',
  'lowest: of the variety or pair worst served; width: mean width over that of one who knows each spread;',
  'no range: figures printed without one. A right model has to stay in 87 to 95 %, a broken one above 85 %.',
  'held is an average: where spreads differ it hides ranges too wide for the steady variety and too narrow for the',
  'unsteady one, which lowest shows.',
  '',
  row(['setting', 'model', 'gardens', 'figure', 'held', 'se', 'lowest', 'width', 'no range', '']),
].join('\n');

/** Two lines of the table: means and differences of one setting. */
export function tableRows(setting: YieldSetting, gardens: number, means: Coverage, differences: Coverage): string {
  const line = (figure: string, coverage: Coverage): string =>
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
      isWithin(setting, coverage) ? '' : 'OUTSIDE',
    ]);
  return `${line('means', means)}\n${line('differences', differences)}`;
}

const percent = (share: number, digits = 1): string => (100 * share).toFixed(digits);

function row(cells: readonly string[]): string {
  return cells
    .map((cell, index) => (index < 4 ? cell.padEnd(WIDTHS[index] ?? 0) : cell.padStart(WIDTHS[index] ?? 10)))
    .join('')
    .trimEnd();
}
