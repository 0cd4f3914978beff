/** Pick or wait, for every chance that a fruit is ripe and every word for the rain to come: a card to carry. */
import { chanceDraws, DRAWS, type UncertainChance } from './chance-draws.ts';
import { type PickOrWait, pickOrWait } from './decision.ts';
import type { Losses } from './loss.ts';

/** Of ten, down the side. */
export const RIPE_OF_TEN = [2, 4, 6, 8] as const;

/**
 * Heavy rain before the next look, along the top: a word stands for a chance, and loosely, as if counted on ten such
 * days. Decided by the makers; no source. A grower with a forecast in tenths reads the nearest.
 */
export const RAIN_WORDS = {
  'none-likely': { mean: 0.1, counted: 10 },
  maybe: { mean: 0.4, counted: 10 },
  likely: { mean: 0.8, counted: 10 },
} as const satisfies Record<string, UncertainChance>;

export type RainWord = keyof typeof RAIN_WORDS;

export interface CardChances {
  /** On how many fruits the chance of ripeness rests; null: taken as exactly what the row says. */
  readonly ripe_counted: number | null;
  readonly split_if_rain: UncertainChance;
  readonly dilution_if_rain: UncertainChance;
  readonly lost: UncertainChance;
}

export interface CardRow {
  readonly ripe_of_ten: (typeof RIPE_OF_TEN)[number];
  readonly cells: Readonly<Record<RainWord, PickOrWait>>;
}

/**
 * Rows of rising chance of ripeness. Down a column and along a row the answer goes from wait over either to pick and
 * never back. Throws RangeError as `chanceDraws`.
 */
export function pickOrWaitCard(chances: CardChances, losses: Losses): CardRow[] {
  const split = chanceDraws(chances.split_if_rain, 2);
  const dilution = chanceDraws(chances.dilution_if_rain, 3);
  const lost = chanceDraws(chances.lost, 4);
  const rains = Object.fromEntries(
    Object.entries(RAIN_WORDS).map(([word, chance]) => [word, chanceDraws(chance, 1)]),
  ) as Record<RainWord, number[]>;
  return RIPE_OF_TEN.map((ripe_of_ten) => {
    const ripe = chanceDraws({ mean: ripe_of_ten / 10, counted: chances.ripe_counted }, 0);
    const cell = (word: RainWord): PickOrWait =>
      pickOrWait(
        Array.from({ length: DRAWS }, (_, draw) => ({
          ripe: ripe[draw] as number,
          rain: rains[word][draw] as number,
          split_if_rain: split[draw] as number,
          dilution_if_rain: dilution[draw] as number,
          lost: lost[draw] as number,
        })),
        losses,
      );
    return {
      ripe_of_ten,
      cells: { 'none-likely': cell('none-likely'), maybe: cell('maybe'), likely: cell('likely') },
    };
  });
}
