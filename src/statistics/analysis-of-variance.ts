/** Type II analysis of variance of the additive model treatment + block. */
import type { BlockDesign } from './block-design.ts';
import { fUpperTail } from './distributions.ts';
import { type Column, contrastColumns } from './factor-coding.ts';
import { extraSumOfSquares } from './least-squares.ts';

export interface VarianceRow {
  readonly term: 'treatment' | 'block' | 'residual';
  readonly df: number;
  /** Sum of squares, and mean square ss/df, in the values' unit squared. */
  readonly ss: number;
  readonly ms: number;
  /** Mean square over the residual mean square, and its upper tail probability; null for the residual. */
  readonly f: number | null;
  readonly p: number | null;
}

/**
 * Each term adjusted for the other (type II: the sum of squares a term adds when it enters after the other).
 * In complete blocks all types agree; with gaps the rows do not add up to the total. A term with one level
 * has no row. `values` are centred and in the order of the design's cells; the residual mean square must be > 0.
 */
export function analysisOfVariance(
  design: BlockDesign,
  values: readonly number[],
  residual: { readonly ss: number; readonly df: number },
): VarianceRow[] {
  const constant: Column[] = [values.map(() => 1)];
  const { treatment, block } = contrastColumns(design);
  const residualMs = residual.ss / residual.df;
  const term = (name: 'treatment' | 'block', own: Column[], other: Column[]): VarianceRow[] => {
    if (own.length === 0) return [];
    const ss = extraSumOfSquares([...constant, ...other], own, values);
    const f = ss / own.length / residualMs;
    return [{ term: name, df: own.length, ss, ms: ss / own.length, f, p: fUpperTail(f, own.length, residual.df) }];
  };
  return [
    ...term('treatment', treatment, block),
    ...term('block', block, treatment),
    { term: 'residual', df: residual.df, ss: residual.ss, ms: residualMs, f: null, p: null },
  ];
}
