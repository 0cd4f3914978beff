/** Sums over judged lists. */
import type { JudgedClaim, JudgedList } from './variety-shortlist-judged.ts';
import type { Short } from './variety-shortlist-regret.ts';

const OF = 20;
/** Below this a claim is no more than a leaning. */
const BOLD = 16;

export interface ClaimRow {
  /** Shared with the yardstick; 4 stands for more too. */
  readonly seasons: number;
  /** Of 20. */
  readonly said: number;
  readonly made: number;
  /** Of 20. */
  readonly came_true: number;
  readonly lasted: number;
}

/** By seasons and by what was said, from 16 of 20 up. */
export function claimRows(lists: readonly JudgedList[]): ClaimRow[] {
  const claims = lists.flatMap((list) => list.claims);
  return [1, 2, 3, 4].flatMap((seasons) =>
    [BOLD, 17, 18, 19].flatMap((said) => {
      const made = claims.filter((one) => one.said === said && isOf(one, seasons));
      if (made.length === 0) return [];
      const of20 = (is: (claim: JudgedClaim) => boolean): number => (OF * made.filter(is).length) / made.length;
      const came_true = of20(({ holds }) => holds);
      return [{ seasons, said, made: made.length, came_true, lasted: of20(({ lasts }) => lasts) }];
    }),
  );
}

const isOf = (one: JudgedClaim, seasons: number): boolean =>
  seasons === 4 ? one.seasons >= 4 : one.seasons === seasons;

export interface RegretMeans {
  readonly lists: number;
  readonly ours: Short;
  readonly raw: Short;
  readonly lot: Short;
  /** By how much ours falls shorter than the raw list, garden by garden, and its standard error. */
  readonly behind_raw: Record<keyof Short, { readonly mean: number; readonly se: number }>;
}

/** Throws RangeError when no list could be held against another. */
export function regretMeans(lists: readonly JudgedList[]): RegretMeans {
  const found = lists.flatMap(({ regret }) => regret ?? []);
  if (found.length < 2) throw new RangeError(`invalid lists: ${found.length} of them can be judged`);
  const mean = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;
  const short = (of: 'ours' | 'raw' | 'lot'): Short => ({
    average: mean(found.map((one) => one[of].average)),
    best: mean(found.map((one) => one[of].best)),
  });
  const behind = (of: keyof Short) => {
    const each = found.map(({ ours, raw }) => ours[of] - raw[of]);
    const middle = mean(each);
    const variance = each.reduce((sum, one) => sum + (one - middle) ** 2, 0) / (each.length - 1);
    return { mean: middle, se: Math.sqrt(variance / each.length) };
  };
  return {
    lists: found.length,
    ours: short('ours'),
    raw: short('raw'),
    lot: short('lot'),
    behind_raw: { average: behind('average'), best: behind('best') },
  };
}
