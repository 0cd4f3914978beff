/**
 * Pick now or wait for the next look, by what either can be expected to lose:
 *   picking   P(unripe) × loss of an unripe one
 *   waiting   P(rain) × (P(split when it rains) × loss of a split one + P(thinned when it rains) × loss of a thinned one)
 *             + P(over or lost by the next look) × loss of a lost one
 * With all chances known it is the rule of cost and loss (Murphy 1977, Monthly Weather Review 105:803-816, from
 * memory): act when the chance of bad weather exceeds cost over loss. Chances are seldom known; where the range of the
 * difference holds 0 the answer is that either will do.
 *
 * A likelier ripe fruit, rain, split, thinning or loss never turns "pick" into "either" or "wait", as long as no draw
 * of it becomes smaller. Supposes that rain and what the vine does without it are separate dangers, not both at once.
 */
import type { Interval } from '../../figure.ts';
import { LOSS, type Losses, type LossWord } from './loss.ts';

/** Of the difference in expected loss: eight in ten, decided by the makers. */
const LEVEL = 0.8;

/** One thing the chances could be, each 0 to 1. */
export interface ChancesDraw {
  readonly ripe: number;
  /** Of heavy rain before the next look. */
  readonly rain: number;
  readonly split_if_rain: number;
  readonly dilution_if_rain: number;
  /** Over, eaten or stolen before the next look, rain apart. */
  readonly lost: number;
}

export type Answer = 'pick' | 'wait' | 'either';

export interface PickOrWait {
  readonly answer: Answer;
  /** Expected loss of waiting less that of picking, in units of a "little" loss: mean over the draws. */
  readonly waiting_costs: number;
  readonly interval: Interval;
  /** Losses that, called one word more or one word less, would change the answer. */
  readonly hinges_on: readonly (keyof Losses)[];
}

/** Throws RangeError without draws and for a chance outside 0 to 1. */
export function pickOrWait(draws: readonly ChancesDraw[], losses: Losses): PickOrWait {
  if (draws.length === 0) throw new RangeError('invalid draws: none');
  for (const draw of draws)
    for (const [name, chance] of Object.entries(draw))
      if (!(chance >= 0 && chance <= 1)) throw new RangeError(`invalid ${name}: ${chance}`);
  const { mean, interval } = differenceOf(draws, losses);
  const answer = answerOf(interval);
  const kinds = Object.keys(losses) as (keyof Losses)[];
  return {
    answer,
    waiting_costs: mean,
    interval,
    hinges_on: kinds.filter((kind) =>
      besides(losses[kind]).some(
        (word) => answerOf(differenceOf(draws, { ...losses, [kind]: word }).interval) !== answer,
      ),
    ),
  };
}

function differenceOf(draws: readonly ChancesDraw[], losses: Losses): { mean: number; interval: Interval } {
  const [unripe, split, dilution, lost] = [
    LOSS[losses.unripe],
    LOSS[losses.split],
    LOSS[losses.dilution],
    LOSS[losses.lost],
  ];
  const differences = draws
    .map(
      (draw) =>
        draw.rain * (draw.split_if_rain * split + draw.dilution_if_rain * dilution) +
        draw.lost * lost -
        (1 - draw.ripe) * unripe,
    )
    .sort((a, b) => a - b);
  const at = (p: number): number => differences[Math.round(p * (differences.length - 1))] ?? 0;
  return {
    mean: differences.reduce((sum, one) => sum + one, 0) / differences.length,
    interval: { low: at((1 - LEVEL) / 2), high: at((1 + LEVEL) / 2), level: LEVEL },
  };
}

const answerOf = ({ low, high }: Interval): Answer => (low > 0 ? 'pick' : high < 0 ? 'wait' : 'either');

const WORDS = Object.keys(LOSS) as LossWord[];
const besides = (word: LossWord): LossWord[] =>
  WORDS.filter((other) => Math.abs(WORDS.indexOf(other) - WORDS.indexOf(word)) === 1);
