/** Claims of ripeness in simulated gardens, held against what the fruits were. */
import { ripeModel } from '../../src/statistics/signs/ripe-chance.ts';
import { ratioProduct } from './ratio-product.ts';
import { type SignsSetting, signsGarden } from './signs-garden.ts';

export interface JudgedClaim {
  readonly chance: number;
  readonly ripe: boolean;
  readonly garden: number;
}

export interface JudgedClaims {
  readonly ours: readonly JudgedClaim[];
  /** The same fruits by the product of ratios. */
  readonly product: readonly JudgedClaim[];
  /** Share of the cut fruits that were ripe, over all gardens. */
  readonly base: number;
}

const LEVEL = 0.9;
/** The simulator's own truth, that the season to come lies elsewhere, is the model's too: nothing is left out here. */
export function judgedClaims(setting: SignsSetting, gardens: number): JudgedClaims {
  const all = Array.from({ length: gardens }, (_, index) => {
    const { cut, hanging } = signsGarden(setting, index + 1);
    const model = ripeModel(cut);
    const product = ratioProduct(cut);
    const judge = (chanceOf: (fruit: (typeof hanging)[number]) => number): JudgedClaim[] =>
      hanging.map((fruit) => ({ chance: chanceOf(fruit), ripe: fruit.answer, garden: index }));
    const ripe = cut.filter(({ answer }) => answer).length / cut.length;
    return { ours: judge((fruit) => model.of(fruit, LEVEL).chance), product: judge(product), ripe };
  });
  return {
    ours: all.flatMap((one) => one.ours),
    product: all.flatMap((one) => one.product),
    base: all.reduce((sum, one) => sum + one.ripe, 0) / gardens,
  };
}

export interface Calibration {
  readonly claims: number;
  /** Mean of what was claimed, and share that came true; of one. */
  readonly said: number;
  readonly held: number;
  /** Standard error of `held`, the garden being the replicate. */
  readonly se: number;
}

/** Claims from `low` to below `high`; null when there is none. */
export function calibration(claims: readonly JudgedClaim[], low: number, high: number): Calibration | null {
  const made = claims.filter(({ chance }) => chance >= low && chance < high);
  if (made.length === 0) return null;
  const mean = (value: (one: JudgedClaim) => number) => made.reduce((sum, one) => sum + value(one), 0) / made.length;
  const held = mean(({ ripe }) => Number(ripe));
  const residuals = new Map<number, number>();
  for (const { garden, ripe } of made) residuals.set(garden, (residuals.get(garden) ?? 0) + Number(ripe) - held);
  const squares = [...residuals.values()].reduce((sum, one) => sum + one ** 2, 0);
  return { claims: made.length, said: mean(({ chance }) => chance), held, se: Math.sqrt(squares) / made.length };
}

/** Mean squared distance of claim and truth. */
export const brier = (claims: readonly JudgedClaim[]): number =>
  claims.reduce((sum, { chance, ripe }) => sum + (chance - Number(ripe)) ** 2, 0) / claims.length;
