import type { Garden, Season } from '../../garden/garden.ts';
import type { Tastings } from '../../statistics/preference/ballot.ts';
import { WEAK_PULL, worths } from '../../statistics/preference/worths.ts';
import { LEVEL } from '../comparison.ts';

/** What tasters were asked of fruits side by side. */
export type TasteQuestion = 'better' | 'sweeter';
export const TASTE_QUESTIONS: readonly TasteQuestion[] = ['better', 'sweeter'];

/** Fewer fruits of a variety speak of those fruits, not of it; fewer ballots rank nothing (house decisions). */
export const FEWEST_TASTED = 3;
export const FEWEST_BALLOTS = 10;

/** What one question’s ballots say of one variety: plain numbers, so that they can be kept. */
export interface VarietyTaste {
  readonly variety: string;
  /** Fruits of it set beside another variety, and ballots that did so. */
  readonly fruits: number;
  readonly ballots: number;
  readonly seasons: number;
  /** Why it is not held against the yardstick; null when it is. */
  readonly cannot: 'yardstick' | 'few-fruits' | 'few-ballots' | 'yardstick-untasted' | 'not-joined' | null;
  /** Chance, of 1, that a fruit of it is worth more than one of the yardstick. */
  readonly better: number | null;
}

export interface Taste {
  readonly question: TasteQuestion;
  readonly ballots: number;
  readonly fruits: number;
  /** Of every variety with a fruit on a ballot, by id. */
  readonly varieties: readonly VarietyTaste[];
}

export interface TasteBallots {
  readonly question: TasteQuestion;
  readonly tastings: Tastings;
  /** Keys of the records that hold them. */
  readonly keys: readonly string[];
}

/** The ballots on one crop: pairs, and orders less the fruits that are not of it. Fruits found unripe say nothing. */
export function ballotsOf(garden: Garden, crop: string, question: TasteQuestion): TasteBallots {
  const ofSeasons = garden.seasons.map((season) => seasonBallots(season, crop, question));
  return {
    question,
    tastings: {
      fruits: new Map(ofSeasons.flatMap(({ fruits }) => [...fruits])),
      pairs: ofSeasons.flatMap(({ pairs }) => pairs),
      orders: ofSeasons.flatMap(({ orders }) => orders),
    },
    keys: ofSeasons.flatMap(({ keys }) => keys),
  };
}

const SAID = { less: 'second', same: 'same', better: 'first', sweeter: 'first' } as const;

function seasonBallots({ slug, plantings, events }: Season, crop: string, question: TasteQuestion) {
  const name = (fruit: string): string => `${slug}/${fruit}`;
  const fruits = new Map(
    plantings
      .filter(({ variety }) => variety?.crop.id === crop)
      .flatMap(({ variety, fruits: own }) =>
        own.filter(({ cut }) => cut?.state !== 'unripe').map((fruit) => [name(fruit.id), variety?.id ?? ''] as const),
      ),
  );
  const pairs = events.tastings.flatMap(({ fruit, against, key, ...told }) => {
    const word = told[question];
    if (fruit === null || against === null || word === null) return [];
    const [first, second] = [name(fruit), name(against)];
    return fruits.has(first) && fruits.has(second) ? [{ first, second, said: SAID[word], key }] : [];
  });
  const orders = events.tastings.flatMap((tasting) => {
    const order = question === 'better' ? tasting.best_first : tasting.sweetest_first;
    const own = (order ?? []).map(name).filter((fruit) => fruits.has(fruit));
    return own.length > 1 ? [{ best_first: own, key: tasting.key }] : [];
  });
  return { fruits, pairs, orders, keys: [...pairs, ...orders].map(({ key }) => key) };
}

/** Held against the yardstick by `statistics/preference`; null without a ballot between two varieties. */
export function tasteOf({ question, tastings }: TasteBallots, yardstick: string): Taste | null {
  const { fruits, pairs, orders } = tastings;
  const ballots = pairs.length + orders.length;
  if (ballots === 0) return null;
  const found = worths({ fruits, pairs, orders: [...orders] }, WEAK_PULL, LEVEL);
  if ('cannot' in found) return null;
  const named = new Set([
    ...pairs.flatMap(({ first, second }) => [first, second]),
    ...orders.flatMap((one) => one.best_first),
  ]);
  const seasonsOf = (variety: string): number =>
    new Set([...named].filter((fruit) => fruits.get(fruit) === variety).map((fruit) => fruit.split('/')[0])).size;
  const tasted = found.varieties.some(({ variety }) => variety === yardstick);
  const isEnough = (one: { readonly fruits: number; readonly ballots: number }): boolean =>
    one.fruits >= FEWEST_TASTED && one.ballots >= FEWEST_BALLOTS;
  const known = tasted && found.varieties.some((one) => one.variety === yardstick && isEnough(one));
  const cannotOf = (one: { variety: string; fruits: number; ballots: number }): VarietyTaste['cannot'] => {
    if (one.variety === yardstick) return 'yardstick';
    if (one.fruits < FEWEST_TASTED) return 'few-fruits';
    if (one.ballots < FEWEST_BALLOTS) return 'few-ballots';
    return known ? null : 'yardstick-untasted';
  };
  return {
    question,
    ballots,
    fruits: named.size,
    varieties: found.varieties.map(({ variety, fruits: own, ballots: on }) => {
      const told = { variety, fruits: own, ballots: on, seasons: seasonsOf(variety) };
      const cannot = cannotOf(told);
      const against = cannot === null ? found.difference(variety, yardstick) : null;
      if (against && 'cannot' in against) return { ...told, cannot: 'not-joined', better: null };
      return { ...told, cannot, better: against?.chance_above ?? null };
    }),
  };
}
