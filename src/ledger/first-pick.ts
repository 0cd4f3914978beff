import { type Dated, isOneDay } from '../dated.ts';
import { type Day, daysBetween } from '../day.ts';
import type { Planting } from '../garden/garden.ts';
import { ripenessOf } from './maturity/ripening.ts';

/** When the first ripe fruit came off some plantings, as nearly as their records tell. */
export interface FirstPick {
  /** A day, or the days it lies between when an earlier basket may have come before a later dated one. */
  readonly picked_on: Dated & { readonly first: Day };
  /** Where it came from; null when more than one planting may have borne it. */
  readonly planting: Planting | null;
  /** Null when either day is not known to the day. */
  readonly days_from_planting: number | null;
  /** Either day was written with an "about". */
  readonly about: boolean;
  /** Keys of the records that tell it. */
  readonly keys: readonly string[];
}

/** The date of the last ripe fruit off some plantings, by the end of what is known of it; null when none is dated. */
export function lastPickOf(plantings: readonly Planting[]): Dated | null {
  return plantings
    .flatMap(picksOf)
    .map(({ on }) => on)
    .reduce<Pick['on'] | null>((last, on) => (last === null || on.last > last.last ? on : last), null);
}

interface Pick {
  readonly planting: Planting;
  readonly key: string;
  readonly on: Dated & { readonly first: Day };
}

/** Null when nothing ripe was picked on a day or in days that are known. Of equal days the planting first in the alphabet. */
export function firstPickOf(plantings: readonly Planting[]): FirstPick | null {
  const picks = plantings
    .flatMap(picksOf)
    .sort((a, b) =>
      a.on.last === b.on.last ? (a.planting.id < b.planting.id ? -1 : 1) : a.on.last < b.on.last ? -1 : 1,
    );
  const [soonest] = picks;
  if (!soonest) return null;
  const maybeEarlier = picks.filter(({ on }) => on.first < soonest.on.first);
  if (maybeEarlier.length === 0) return certain(soonest);
  const first = maybeEarlier.map(({ on }) => on.first).sort()[0] ?? soonest.on.first;
  const { last } = soonest.on;
  return {
    picked_on: { kind: 'span', first, last, text: `${first}..${last}` },
    planting: null,
    days_from_planting: null,
    about: false,
    keys: [soonest, ...maybeEarlier].map(({ key }) => key),
  };
}

function certain({ planting, key, on }: Pick): FirstPick {
  const planted = planting.planted_on;
  const known = planted.first !== null && isOneDay(planted) && isOneDay(on);
  return {
    picked_on: on,
    planting,
    days_from_planting: known ? daysBetween(planted.first, on.first) : null,
    about: on.kind === 'about' || planted.kind === 'about',
    keys: [planting.key, key],
  };
}

function picksOf(planting: Planting): Pick[] {
  const told = [
    ...planting.fruits.flatMap((fruit) =>
      fruit.fate === 'picked' && fruit.pick && ripenessOf(fruit) !== 'not-yet'
        ? [{ key: fruit.key, picked_on: fruit.pick.picked_on }]
        : [],
    ),
    ...planting.pickings.filter(({ count }) => count > 0),
  ];
  return told.flatMap(({ key, picked_on }) => (picked_on.first === null ? [] : [{ planting, key, on: picked_on }]));
}
