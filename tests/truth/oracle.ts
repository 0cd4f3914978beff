import { inverse, Matrix } from 'ml-matrix';
import type { Truth } from '../simulated/yield/truth.ts';

/** z(0.95) of printed normal tables. */
const Z = 1.645;

/** Widths of the 90 % ranges of someone who knows each mound's standard deviation and nothing else beforehand. */
export interface Oracle {
  readonly mean: (variety: string) => number;
  readonly difference: (a: string, b: string) => number;
}

/**
 * Weighted least squares (each mound weighs 1/sd²) of value = variety + block, the first block taken as zero, so
 * coded otherwise than the code it is held against. Widths are 2 z √(c' (X'WX)⁻¹ c), in the measure's unit.
 */
export function oracleOf({ means, mounds }: Truth): Oracle {
  const varieties = Object.keys(means);
  const blocks = [...new Set(mounds.flatMap(({ block }) => block ?? []))].sort();
  const later = blocks.slice(1);
  const model = new Matrix(
    mounds.map(({ variety, block }) => [
      ...varieties.map((one) => (one === variety ? 1 : 0)),
      ...later.map((one) => (one === block ? 1 : 0)),
    ]),
  );
  const weighted = new Matrix(
    model.to2DArray().map((row, index) => row.map((one) => one / (mounds[index]?.sd ?? 0) ** 2)),
  );
  const covariance = inverse(weighted.transpose().mmul(model));
  const width = (weights: readonly number[]): number => {
    const row = Matrix.rowVector([...weights]);
    return 2 * Z * Math.sqrt(row.mmul(covariance).mmul(row.transpose()).get(0, 0));
  };
  const of = (variety: string): number[] => varieties.map((one) => (one === variety ? 1 : 0));
  return {
    mean: (variety) => width([...of(variety), ...later.map(() => 1 / blocks.length)]),
    difference: (a, b) => {
      const minus = of(b);
      return width([...of(a).map((one, index) => one - (minus[index] ?? 0)), ...later.map(() => 0)]);
    },
  };
}
