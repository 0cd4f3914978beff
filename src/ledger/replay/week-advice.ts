import type { Day } from '../../day.ts';
import type { Crop, Garden } from '../../garden/garden.ts';
import type { Kept } from '../../kept.ts';
import type { CardRow, RainWord } from '../../statistics/pick-or-wait/card.ts';
import type { Answer } from '../../statistics/pick-or-wait/decision.ts';
import { createBases } from '../bases.ts';
import { cropPicksOrWaits } from '../pick-or-wait/crop-pick-or-wait.ts';
import { cropRains } from '../rain-sugar/crop-rain.ts';
import { judgedFruits } from '../ripeness/judged-fruit.ts';
import { cardTicks } from '../ripeness/ticks.ts';
import { rainCame } from './rain-came.ts';
import type { WeekClaim } from './week-claims.ts';

/** What the rain card said of a claim and of the rain that came. */
export interface WeekAdvice {
  readonly season: string;
  readonly week: Day;
  readonly crop: string;
  readonly fruit: string;
  readonly looked_on: Day;
  /** The card's row nearest to the claim, of ten. */
  readonly row: number;
  readonly rain: RainWord;
  readonly answer: Answer;
}

/** The rain card of a crop as it would have been printed on a day; null for a crop eaten young. */
export function cardOn(book: Garden, crop: Crop, day: Day, kept: Kept): readonly CardRow[] | null {
  const own = { ...book, varieties: book.varieties.filter((variety) => variety.crop.id === crop.id) };
  const bases = createBases();
  const ticks = cardTicks(crop, judgedFruits(book.seasons, crop), 'ripe.replay', bases);
  const told = { rain: cropRains(own, bases, kept), ripeness: [{ crop, ticks }], waters: [] };
  const [found] = cropPicksOrWaits(own, day, told, bases, kept);
  return found?.rows ?? null;
}

/** Of every claim whose rain is known: `after` is the garden as known once the next look was due. */
export function weekAdvice(after: Garden, claims: readonly WeekClaim[], card: readonly CardRow[]): WeekAdvice[] {
  return claims.flatMap(({ season, week, crop, fruit, looked_on, of_ten }): WeekAdvice[] => {
    const rain = rainCame(after, looked_on);
    const row = nearest(card, of_ten);
    if (rain === null || !row) return [];
    return [{ season, week, crop, fruit, looked_on, row: row.ripe_of_ten, rain, answer: row.cells[rain].answer }];
  });
}

/** Of two as near, the lower: it promises less. */
const nearest = (card: readonly CardRow[], of_ten: number): CardRow | undefined =>
  card.toSorted((a, b) => Math.abs(a.ripe_of_ten - of_ten) - Math.abs(b.ripe_of_ten - of_ten))[0];
