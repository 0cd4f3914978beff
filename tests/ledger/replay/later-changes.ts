import { addDays, type Day } from '../../../src/day.ts';
import { knownOn } from '../../../src/garden/as-of.ts';
import type { Fruit, Garden, Season, Visit, WeatherDay } from '../../../src/garden/garden.ts';
import { type Chance, wholeBetween } from '../../simulated/chance.ts';

/** The garden with records of days after a limit changed, dropped or added by lot; none known till then is touched. */
export function laterChanged(garden: Garden, limit: Day, chance: Chance): Garden {
  return {
    ...garden,
    seasons: garden.seasons.map((season) => seasonChanged(season, limit, chance)),
    stations: garden.stations.map((station) => ({
      ...station,
      days: station.days.map((day) => (day.date > limit ? dayChanged(day, chance) : day)),
    })),
  };
}

const dayChanged = (day: WeatherDay, chance: Chance): WeatherDay => ({
  ...day,
  rain_mm: chance() < 0.3 ? 40 : 0,
  tmax_c: wholeBetween(chance, 18, 36),
  tmin_c: wholeBetween(chance, 5, 15),
});

function seasonChanged(season: Season, limit: Day, chance: Chance): Season {
  const isLater = ({ recorded_on, visited_on }: Visit): boolean => (recorded_on ?? visited_on) > limit;
  return {
    ...season,
    plantings: season.plantings.map((planting) => ({
      ...planting,
      fruits: planting.fruits.map((fruit) => fruitChanged(fruit, limit, season.ends_on, chance)),
    })),
    visits: season.visits.flatMap((visit) => (isLater(visit) ? visitChanged(visit, chance) : [visit])),
  };
}

/** Dropped, or every look at it another one. */
const visitChanged = (visit: Visit, chance: Chance): Visit[] =>
  chance() < 0.2
    ? []
    : [
        {
          ...visit,
          fruits: visit.fruits.map((look) => ({
            ...look,
            tendril: chance() < 0.5 ? ('dry' as const) : ('green' as const),
            ground_spot: chance() < 0.5 ? ('butter' as const) : ('white' as const),
            call: chance() < 0.5 ? ('ripe' as const) : ('not-yet' as const),
          })),
        },
      ];

const STATES = ['unripe', 'just-ripe', 'prime', 'over'] as const;

/** Cut to another state, picked another day, never picked after all; or one that hung to the end picked and cut. */
function fruitChanged(fruit: Fruit, limit: Day, season_end: Day, chance: Chance): Fruit {
  const { pick, cut, end } = fruit;
  const isLater = (day: Day | null): boolean => day !== null && day > limit;
  const cutLater = cut && isLater(knownOn(cut.cut_on ?? null, cut));
  const pickLater = pick && isLater(knownOn(pick.picked_on, pick));
  const state = STATES[wholeBetween(chance, 0, 3)] ?? 'over';
  if (pick && pickLater && (!cut || cutLater) && chance() < 0.2)
    return { ...fruit, fate: 'growing', pick: null, cut: null };
  if (fruit.fate === 'growing' && !pick && !cut && !end && limit < season_end && chance() < 0.5)
    return hangsNoMore(fruit, addDays(limit, 1), state);
  const shift = wholeBetween(chance, 0, 5);
  const moved = (day: Day): Day => addDays(day, shift);
  return {
    ...fruit,
    pick:
      pick && pickLater && pick.picked_on.first !== null && pick.picked_on.first > limit
        ? { ...pick, picked_on: dayOf(moved(pick.picked_on.first)) }
        : pick,
    cut: cut && cutLater ? { ...cut, state } : cut,
  };
}

const dayOf = (day: Day) => ({ kind: 'day', first: day, last: day, text: day }) as const;

const NO_PICK = { recorded_on: null } as unknown as NonNullable<Fruit['pick']>;
const NO_CUT = { recorded_on: null, why: null } as unknown as NonNullable<Fruit['cut']>;

const hangsNoMore = (fruit: Fruit, day: Day, state: (typeof STATES)[number]): Fruit => ({
  ...fruit,
  fate: 'picked',
  pick: { ...NO_PICK, picked_on: dayOf(day) },
  cut: { ...NO_CUT, cut_on: dayOf(day), state },
});
