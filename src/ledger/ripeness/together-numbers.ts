import { type ClaimCap, claimCap } from '../../statistics/signs/claim-cap.ts';
import { heldOutFruits } from '../../statistics/signs/held-out.ts';
import { answerOf, type RipeQuestion, type StateInside } from '../../statistics/signs/likelihood-ratio.ts';
import { type CutFruit, type LookedFruit, type RipeChance, ripeModel } from '../../statistics/signs/ripe-chance.ts';
import { tooFewFor } from './enough.ts';

/** A fruit that was looked over and then cut. */
export interface KnownFruit extends LookedFruit {
  readonly season: string;
  readonly state: StateInside;
}

/** What is reckoned from: nothing else bears on the numbers. */
export interface TogetherInput {
  readonly known: readonly KnownFruit[];
  /** Not cut yet, or never. */
  readonly asked: readonly LookedFruit[];
}

/** A crop's signs put together for one question, as plain numbers. */
export interface QuestionNumbers {
  readonly question: RipeQuestion;
  /** Cut fruits of which it is asked, and how many answer yes. */
  readonly fruits: number;
  readonly yes: number;
  readonly seasons: number;
  /** Of the fruits asked about, in their order; null where the cuts are too few. */
  readonly chances: readonly RipeChance[] | null;
  /** Told without its season, of every known fruit in their order (null where it is not asked of); null before a second season. */
  readonly held_out: readonly (number | null)[] | null;
}

export const LEVEL = 0.9;

/** Pure: the same input, the same numbers. */
export const togetherNumbers = ({ known, asked }: TogetherInput): QuestionNumbers[] =>
  (['ripe-yet', 'too-late'] as const).map((question) => {
    const cut = cutFor(known, question);
    const yes = cut.filter(({ answer }) => answer).length;
    const isTold = tooFewFor(question, yes, cut.length - yes) === null;
    const model = isTold ? ripeModel(cut) : null;
    return {
      question,
      fruits: cut.length,
      yes,
      seasons: new Set(cut.map(({ season }) => season)).size,
      chances: model && asked.map((fruit) => model.of(fruit, LEVEL)),
      held_out: isTold ? heldOut(known, question) : null,
    };
  });

/** The known fruits of which a question is asked, with its answer. */
export const cutFor = (known: readonly KnownFruit[], question: RipeQuestion): CutFruit[] =>
  known.flatMap(({ state, ...fruit }) => {
    const answer = answerOf(state, question);
    return answer === null ? [] : [{ ...fruit, answer }];
  });

function heldOut(known: readonly KnownFruit[], question: RipeQuestion): (number | null)[] | null {
  const found = heldOutFruits(cutFor(known, question));
  if ('cannot' in found) return null;
  const chances = found.map(({ chance }) => chance)[Symbol.iterator]();
  return known.map(({ state }) => (answerOf(state, question) === null ? null : (chances.next().value ?? null)));
}

/** The most that may be claimed, by what would have been said of each cut fruit without its season. */
export function capOn(known: readonly KnownFruit[], { question, held_out }: QuestionNumbers): ClaimCap {
  return claimCap(
    known.flatMap(({ season, state }, index) => {
      const [claimed, held] = [held_out?.[index] ?? null, answerOf(state, question)];
      return claimed === null || held === null ? [] : [{ season, claimed, held }];
    }),
  );
}
