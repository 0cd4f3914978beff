import type { Day } from '../../day.ts';
import { asOf } from '../../garden/as-of.ts';
import type { Fruit, Garden, Season } from '../../garden/garden.ts';

/**
 * The garden as known on a day. Two things more are known of its fruits: one that a known visit looked at hung there,
 * though nothing else was written of it yet; and one whose end nobody dated hung till its cut, whatever its fate says now.
 */
export function knownGarden(garden: Garden, day: Day): Garden {
  const known = asOf(garden, day);
  return { ...known, seasons: known.seasons.map((season) => hanging(season, garden)) };
}

function hanging(season: Season, { seasons }: Garden): Season {
  const looked = new Set(season.visits.flatMap(({ fruits }) => fruits.map(({ fruit }) => fruit)));
  const whole = seasons.find(({ slug }) => slug === season.slug)?.plantings ?? [];
  return {
    ...season,
    plantings: season.plantings.map((planting) => {
      const all = whole.find(({ id }) => id === planting.id)?.fruits ?? [];
      const known = new Map(planting.fruits.map((fruit) => [fruit.id, fruit]));
      return {
        ...planting,
        fruits: all.flatMap((fruit) => {
          const own = known.get(fruit.id);
          if (!own) return looked.has(fruit.id) ? [hung(fruit)] : [];
          const isEnded = own.fate !== 'growing' && !own.pick && !own.end && !own.cut && fruit.cut !== null;
          return [isEnded ? { ...own, fate: 'growing' } : own];
        }),
      };
    }),
  };
}

const hung = (fruit: Fruit): Fruit => ({ ...fruit, fate: 'growing', set: null, pick: null, end: null, cut: null });

/** Parts of the records that tell of fruits and looks, and how many of them say when they were written down. */
export interface Dating {
  readonly parts: number;
  readonly recorded: number;
}

export function datingOf(seasons: readonly Season[]): Dating {
  const parts = [
    ...seasons.flatMap(({ visits }) => visits),
    ...fruitsOf(seasons).flatMap(({ set, pick, end, cut }) => [set, pick, end, cut].filter((part) => part !== null)),
  ];
  return { parts: parts.length, recorded: parts.filter(({ recorded_on }) => recorded_on !== null).length };
}

const fruitsOf = (seasons: readonly Season[]): Fruit[] =>
  seasons.flatMap(({ plantings }) => plantings.flatMap(({ fruits }) => fruits));
