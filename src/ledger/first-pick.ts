import type { Dated } from '../dated.ts';
import { type Day, daysBetween } from '../day.ts';
import type { Fruit, Planting } from '../garden/garden.ts';

/** The first ripe fruit off some plantings, as far as it is dated to a day. */
export interface FirstPick {
  readonly planting: Planting;
  readonly on: Day;
  readonly picked_on: Dated;
  /** Null when the day of planting out is not known to the day. */
  readonly days_from_planting: number | null;
  /** Keys of the planting and of the record that tells it. */
  readonly keys: readonly string[];
}

/** Null when nothing ripe was picked on a known day. Of one day, the planting first in the alphabet's order. */
export function firstPickOf(plantings: readonly Planting[]): FirstPick | null {
  return plantings
    .flatMap(picksOf)
    .reduce<FirstPick | null>((first, pick) => (isEarlier(pick, first) ? pick : first), null);
}

const isEarlier = (pick: FirstPick, than: FirstPick | null): boolean =>
  than === null || pick.on < than.on || (pick.on === than.on && pick.planting.id < than.planting.id);

function picksOf(planting: Planting): FirstPick[] {
  const told = [
    ...planting.fruits.filter(wasRipe).flatMap(({ key, pick }) => (pick ? [{ key, picked_on: pick.picked_on }] : [])),
    ...planting.pickings.filter(({ count }) => count > 0),
  ];
  return told.flatMap(({ key, picked_on }) =>
    picked_on.kind === 'day' || picked_on.kind === 'about'
      ? [
          {
            planting,
            on: picked_on.first,
            picked_on,
            days_from_planting: daysFrom(planting.planted_on, picked_on.first),
            keys: [planting.key, key],
          },
        ]
      : [],
  );
}

/** Picked because it was ripe, or with no reason written; not one that the knife found unripe. */
const wasRipe = ({ fate, pick, cut }: Fruit): boolean =>
  fate === 'picked' && (pick?.reason ?? 'ripe') === 'ripe' && cut?.state !== 'unripe';

const daysFrom = (planted: Dated, picked: Day): number | null =>
  planted.kind === 'day' || planted.kind === 'about' ? daysBetween(planted.first, picked) : null;
