import { because, type Reason } from '../../figure.ts';
import type { RipeQuestion } from '../../statistics/signs/likelihood-ratio.ts';

/** Fewest fruits looked at and cut, and fewest unripe (or over) among them, from which a sign's worth is printed. No source: a judgement. */
export const ENOUGH = { cuts: 20, unripe: 6, over: 6 } as const;

/** Too few to say, unless there are ripe ones, cuts and unripe ones enough. */
export const tooFew = (cuts: number, unripe: number): Reason | null =>
  cuts >= ENOUGH.cuts && unripe >= ENOUGH.unripe && cuts > unripe
    ? null
    : because('few-cuts', { cuts, unripe, need_cuts: ENOUGH.cuts, need_unripe: ENOUGH.unripe });

/** The same for a question, by how many fruits answer yes and no. Of "too late" the over are the rare ones. */
export function tooFewFor(question: RipeQuestion, yes: number, no: number): Reason | null {
  if (question === 'ripe-yet') return tooFew(yes + no, no);
  return yes + no >= ENOUGH.cuts && yes >= ENOUGH.over && no > 0
    ? null
    : because('few-over', { cuts: yes + no, over: yes, need_cuts: ENOUGH.cuts, need_over: ENOUGH.over });
}
