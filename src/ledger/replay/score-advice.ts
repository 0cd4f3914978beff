import { addDays } from '../../day.ts';
import { LOSS, type Losses } from '../../statistics/pick-or-wait/loss.ts';
import { SPLITS_WITHIN_DAYS } from '../storm/hanging.ts';
import { holdsUntil, type Outcome } from './outcome.ts';
import type { WeekAdvice } from './week-advice.ts';

/** Advice, and what picking at that look and waiting for the next are seen to have cost, in units of a little loss. */
export interface JudgedAdvice extends WeekAdvice {
  /** Null, as are all others, where it was not cut while the look held. */
  readonly picking: number | null;
  readonly waiting: number | null;
  /** Beyond the better of the two; where either will do, the mean of both. */
  readonly regret: number | null;
}

export interface AdviceScore {
  readonly judged: number;
  /** Advice that cost more than the other answer would have. */
  readonly missed: number;
  readonly picks: number;
  readonly waits: number;
  /** Added up over the advice, in units of a little loss. */
  readonly regret: { readonly card: number; readonly always_pick: number; readonly always_wait: number };
}

/**
 * Picked, an unripe fruit costs what an unripe one is worth. Left, one that burst, rotted, was gnawed or went over before
 * it came off costs that. What fruit picked whole would have come to is not seen, so waiting for it counts as free.
 */
export function judgeAdvice(advice: WeekAdvice, outcome: Outcome | undefined, losses: Losses): JudgedAdvice {
  if (!outcome || !holdsUntil(advice.looked_on, outcome))
    return { ...advice, picking: null, waiting: null, regret: null };
  const picking = outcome.state === 'unripe' ? LOSS[losses.unripe] : 0;
  const waiting = waitingLoss(advice, outcome, losses);
  const cost = { pick: picking, wait: waiting, either: (picking + waiting) / 2 }[advice.answer];
  return { ...advice, picking, waiting, regret: cost - Math.min(picking, waiting) };
}

function waitingLoss({ looked_on }: WeekAdvice, { fruit, state, off }: Outcome, losses: Losses): number {
  if (off.first <= looked_on || off.first > addDays(looked_on, SPLITS_WITHIN_DAYS)) return 0;
  const { pick, end } = fruit;
  if (pick?.condition === 'split' || end?.lost_to === 'split') return LOSS[losses.split];
  const isLost = ['rotten', 'gnawed'].includes(pick?.condition ?? '') || ['rot', 'animal'].includes(end?.lost_to ?? '');
  return isLost || state === 'over' ? LOSS[losses.lost] : 0;
}

/** Null where no advice was judged. */
export function scoreAdvice(advice: readonly JudgedAdvice[]): AdviceScore | null {
  const judged = advice.flatMap(({ picking, waiting, regret, answer }) =>
    picking === null || waiting === null || regret === null ? [] : [{ picking, waiting, regret, answer }],
  );
  if (judged.length === 0) return null;
  const sum = (of: (one: (typeof judged)[number]) => number): number => judged.reduce((all, one) => all + of(one), 0);
  const best = sum(({ picking, waiting }) => Math.min(picking, waiting));
  return {
    judged: judged.length,
    missed: judged.filter(({ regret, answer }) => answer !== 'either' && regret > 0).length,
    picks: judged.filter(({ answer }) => answer === 'pick').length,
    waits: judged.filter(({ answer }) => answer === 'wait').length,
    regret: {
      card: sum(({ regret }) => regret),
      always_pick: sum(({ picking }) => picking) - best,
      always_wait: sum(({ waiting }) => waiting) - best,
    },
  };
}
