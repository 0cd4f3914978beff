import type { Ending, KeptFruit, Place } from './kept-fruit.ts';

/** The endings in the order they are told. */
export const ENDINGS: readonly Ending[] = ['eaten-sound', 'given-away', 'eaten-soft', 'rotted'];

/** What became of the fruit of one crop in one place. */
export interface PlaceLine {
  /** Null where nobody said. */
  readonly place: Place;
  readonly fruits: number;
  /** In the order of `ENDINGS`. */
  readonly endings: readonly { readonly ended: Ending; readonly count: number }[];
  /** Days from picking to the end, over those known; null where none is. */
  readonly days: { readonly least: number; readonly most: number } | null;
}

/** The place with most fruit first. */
export function placeLines(fruits: readonly KeptFruit[]): PlaceLine[] {
  const places = [...new Set(fruits.map(({ place }) => place))];
  return places
    .map((place) => {
      const own = fruits.filter((one) => one.place === place);
      const days = own.flatMap((one) => one.days ?? []);
      return {
        place,
        fruits: own.length,
        endings: ENDINGS.map((ended) => ({ ended, count: own.filter((one) => one.ended === ended).length })),
        days: days.length > 0 ? { least: Math.min(...days), most: Math.max(...days) } : null,
      };
    })
    .sort((a, b) => b.fruits - a.fruits || ((a.place ?? '') < (b.place ?? '') ? -1 : 1));
}
