import { Matrix, solve } from 'ml-matrix';
import type { MixedData, MixedFit } from '../../../src/statistics/mixed-model/fit-mixed.ts';

/**
 * What each level of each random factor adds, best linear unbiased prediction in the values' unit: Henderson 1975,
 * Biometrics 31:423-447 (from memory), (ZᵗZ + σ²G⁻¹) u = Zᵗ(y - Xb) at a fit's components and coefficients. Levels of
 * a factor without spread add nothing.
 */
export function predictedEffects(data: MixedData, fit: MixedFit): Map<string, Map<string, number>> {
  const left = data.y.map((value, row) =>
    fit.coefficients.reduce((rest, { estimate }, j) => rest - estimate * (data.fixed[j]?.values[row] ?? 0), value),
  );
  const all = data.random.flatMap(({ name, levels }, k) =>
    [...new Set(levels)].map((level) => ({ name, level, k, variance: fit.components[k]?.variance ?? 0 })),
  );
  const spread = all.filter(({ variance }) => variance > 0);
  const has = (row: number, { level, k }: { level: string; k: number }) => data.random[k]?.levels[row] === level;
  const z = new Matrix(left.map((_, row) => spread.map((one) => (has(row, one) ? 1 : 0))));
  const shrink = Matrix.diag(spread.map(({ variance }) => fit.residual_variance / variance));
  const turned = z.transpose();
  const effects =
    spread.length === 0 ? [] : solve(turned.mmul(z).add(shrink), turned.mmul(Matrix.columnVector(left))).to1DArray();
  const predicted = new Map(data.random.map(({ name }) => [name, new Map<string, number>()]));
  for (const one of all) predicted.get(one.name)?.set(one.level, effects[spread.indexOf(one)] ?? 0);
  return predicted;
}
