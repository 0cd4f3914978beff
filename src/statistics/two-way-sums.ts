/**
 * Sums of squares of treatments crossed with blocks and repeated in them, with their interaction (variety x season),
 * tested against what repeats of one treatment in one block differ by. With unequal repeats there are several sums for
 * a treatment, named by types as in the manual of SAS PROC GLM (from memory):
 * I, one after the other, treatment first; II, each after the other main effect; III, each after the other and the
 * interaction, so that every cell weighs the same. With equal repeats all agree.
 */
import { arrange, type BlockDesign, linkedGroups, type Observation } from './block-design.ts';
import { fUpperTail } from './distributions.ts';
import { additiveColumns, type Column, contrastColumns } from './factor-coding.ts';
import { extraSumOfSquares, leastSquares, sumOfSquares } from './least-squares.ts';

/** Values this close to the fit, relative to the largest of them, differ by rounding only. */
const ROUNDING = 64 * Number.EPSILON;

export type SumsType = 'I' | 'II' | 'III';

export interface TwoWayRow {
  readonly term: 'treatment' | 'block' | 'interaction' | 'residual';
  readonly df: number;
  /** Sum of squares, and mean square ss/df, in the values' unit squared. */
  readonly ss: number;
  readonly ms: number;
  /** Mean square over the residual mean square, and its upper tail probability; null for the residual. */
  readonly f: number | null;
  readonly p: number | null;
}

export interface TwoWaySums {
  readonly type: SumsType;
  /** No row for an interaction without degrees of freedom. Rows need not add up to the total. */
  readonly rows: readonly TwoWayRow[];
}

/** Why there is no table. */
export type TwoWayRefusal =
  /** Fewer than two treatments or two blocks, or an observation without a block. */
  | { readonly code: 'not-crossed' }
  | { readonly code: 'not-linked'; readonly groups: readonly (readonly string[])[] }
  /** Type III asks for every treatment in every block. */
  | { readonly code: 'empty-cells'; readonly empty: number }
  /** No treatment is repeated in a block: only the additive model can be fitted. */
  | { readonly code: 'no-residual-df' }
  | { readonly code: 'no-spread'; readonly df: number };

/** The table of one type, or why there is none. Throws RangeError for a value that is not finite. */
export function twoWaySums(
  observations: readonly Observation[],
  type: SumsType,
): TwoWaySums | { readonly cannot: TwoWayRefusal } {
  const design = arrange(observations);
  const { treatments, blocks, cells } = design;
  if (blocks.length === 0) return { cannot: { code: 'not-crossed' } };
  const groups = linkedGroups(design);
  if (groups.length > 1) return { cannot: { code: 'not-linked', groups } };
  // Centring first keeps the digits in which values differ when they share many leading ones.
  const centre = average(cells.map((cell) => cell.value));
  const filled = filledCells(design, centre);
  const empty = treatments.length * blocks.length - filled.length;
  if (type === 'III' && empty > 0) return { cannot: { code: 'empty-cells', empty } };
  const df = cells.length - filled.length;
  if (df === 0) return { cannot: { code: 'no-residual-df' } };

  const values = cells.map((cell) => cell.value - centre);
  const residualSs = filled.reduce(
    (sum, own) => sum + sumOfSquares(own.values.map((value) => value - average(own.values))),
    0,
  );
  const residualMs = residualSs / df;
  const largest = Math.max(...cells.map((cell) => Math.abs(cell.value)));
  if (Math.sqrt(residualMs) <= ROUNDING * largest) return { cannot: { code: 'no-spread', df } };
  const row = (term: TwoWayRow['term'], own: { ss: number; df: number }): TwoWayRow => {
    const f = own.ss / own.df / residualMs;
    return { term, ...own, ms: own.ss / own.df, f, p: fUpperTail(f, own.df, df) };
  };
  const interaction = interactionOf(design, filled);
  return {
    type,
    rows: [
      ...mainEffects(design, values, type).map(({ term, ...own }) => row(term, own)),
      ...(interaction.df > 0 ? [row('interaction', interaction)] : []),
      { term: 'residual', df, ss: residualSs, ms: residualMs, f: null, p: null },
    ],
  };
}

interface FilledCell {
  readonly treatment: number;
  readonly block: number;
  readonly values: number[];
}

/** In the order of the design's cells, with values less the centre. */
function filledCells(design: BlockDesign, centre: number): FilledCell[] {
  const filled = new Map<number, FilledCell>();
  for (const { treatment, block, value } of design.cells) {
    const place = treatment * design.blocks.length + block;
    const own = filled.get(place) ?? { treatment, block, values: [] };
    own.values.push(value - centre);
    filled.set(place, own);
  }
  return [...filled.values()];
}

function mainEffects(
  design: BlockDesign,
  values: readonly number[],
  type: SumsType,
): { term: 'treatment' | 'block'; ss: number; df: number }[] {
  const constant: Column[] = [values.map(() => 1)];
  const { treatment, block } = contrastColumns(design);
  const products = treatment.flatMap((one) =>
    block.map((other) => one.map((value, index) => value * (other[index] ?? 0))),
  );
  const beside = type === 'III' ? products : [];
  const before = type === 'I' ? [] : [...block, ...beside];
  return [
    { term: 'treatment', ss: extraSumOfSquares([...constant, ...before], treatment, values), df: treatment.length },
    {
      term: 'block',
      ss: extraSumOfSquares([...constant, ...treatment, ...beside], block, values),
      df: block.length,
    },
  ];
}

/** What the additive model leaves of the cells' means, each weighing its number of values: cells may be empty. */
function interactionOf(design: BlockDesign, filled: readonly FilledCell[]): { ss: number; df: number } {
  const weight = filled.map((own) => Math.sqrt(own.values.length));
  const weighted = (column: Column): Column => column.map((value, index) => value * (weight[index] ?? 0));
  const columns = additiveColumns({ ...design, cells: filled }).map(weighted);
  const means = weighted(filled.map((own) => average(own.values)));
  return { ss: leastSquares(columns, means).residual_ss, df: filled.length - columns.length };
}

const average = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;
