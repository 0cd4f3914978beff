import type { Figure, Interval } from '../../figure.ts';
import { type Kept, keptOr } from '../../kept.ts';
import {
  type RipeQuestion,
  type SignCounts,
  signCounts,
  signEvidence,
} from '../../statistics/signs/likelihood-ratio.ts';
import type { Bases } from '../bases.ts';
import { cutWay } from './cut-way.ts';
import { tooFewFor } from './enough.ts';
import type { JudgedFruit } from './judged-fruit.ts';
import type { Shown } from './sign-shown.ts';

/** In the order of a fruit's life. */
export const RIPE_QUESTIONS: readonly RipeQuestion[] = ['ripe-yet', 'too-late'];

/** Of a range: where it lies wholly on one side of "as often". */
export type Leaning = 'to-yes' | 'to-no' | 'unsure';

const LEVEL = 0.9;

/** What the cuts say of a sign in one question. */
export interface SignWorth {
  readonly question: RipeQuestion;
  /** Of all fruits looked over for it. */
  readonly counts: SignCounts;
  /** Of those cut by lot alone: they were not chosen by their signs. */
  readonly by_lot: SignCounts;
  /** How many times as often it shows where the answer is yes; null with a reason where the cuts are too few. */
  readonly ratio: Figure;
  /** Null where the ratio is. */
  readonly leans: Leaning | null;
}

/** Counts one sign in one question over the judged fruits. `stem` begins the figure's id. */
export function signWorth(
  fruits: readonly JudgedFruit[],
  shown: Shown,
  question: RipeQuestion,
  stem: string,
  bases: Bases,
  kept: Kept,
): SignWorth {
  const looked = fruits.flatMap((judged) => {
    const shows = shown(judged);
    return shows === null ? [] : [{ judged, state: judged.state, shown: shows }];
  });
  const counts = signCounts(looked, question);
  const asked = looked.filter(({ state }) => question === 'ripe-yet' || state !== 'unripe');
  const reason = tooFewFor(question, counts.yes.looked, counts.no.looked);
  const ratioOf = () =>
    keptOr(kept, 'fits', JSON.stringify(['sign-ratio', counts, LEVEL]), () => signEvidence(counts, LEVEL).shown);
  const found = reason === null ? ratioOf() : null;
  const seasons = new Set(asked.map(({ judged }) => judged.season.slug)).size;
  return {
    question,
    counts,
    by_lot: signCounts(
      looked.filter(({ judged }) => cutWay(judged.fruit) === 'lot'),
      question,
    ),
    ratio: {
      id: `${stem}.${question}.times`,
      value: found?.ratio ?? null,
      unit: 'times',
      interval: found?.interval ?? null,
      n: asked.length,
      replicate: { kind: 'fruit', count: asked.length },
      reach: seasons > 1 ? 'next-summer-here' : 'another-spot-this-summer',
      method: 'sign-ratio',
      source: 'jeffreys-share',
      basis: bases.of(asked.map(({ judged }) => judged.fruit.key)),
      reason,
    },
    leans: found === null ? null : leaning(found.interval),
  };
}

const leaning = ({ low, high }: Interval): Leaning => (low > 1 ? 'to-yes' : high < 1 ? 'to-no' : 'unsure');
