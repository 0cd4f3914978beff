import { daysBetween } from '../../src/day.ts';
import type { EventOf } from '../../src/garden/event.ts';
import type { Crop, Fruit, Garden } from '../../src/garden/garden.ts';

type Keeping = EventOf<'keeping'>;
export type Place = Keeping['place'];
export type Ending = Keeping['ended'];

/** A picked fruit laid by, from the day it came off to its end. */
export interface KeptFruit {
  readonly key: string;
  /** Null where nobody knows its variety. */
  readonly crop: Crop | null;
  readonly place: Place;
  readonly store_c: number | null;
  readonly ended: Ending;
  /** It had gone off: soft or rotten. The others were sound when somebody ate them or gave them away. */
  readonly spoilt: boolean;
  /** From picking; null unless both days are known to the day, or about. */
  readonly days: number | null;
}

/** Every entry of all seasons, by day; one whose fruit is not in the register has neither crop nor days. */
export function keptFruits({ seasons }: Garden): KeptFruit[] {
  return seasons.flatMap(({ plantings, events }) =>
    events.keeping.map((entry) => {
      const planting = plantings.find(({ fruits }) => fruits.some(({ id }) => id === entry.fruit));
      const fruit = planting?.fruits.find(({ id }) => id === entry.fruit);
      return {
        key: entry.key,
        crop: planting?.variety?.crop ?? null,
        place: entry.place,
        store_c: entry.store_c,
        ended: entry.ended,
        spoilt: entry.ended === 'rotted' || entry.ended === 'eaten-soft',
        days: fruit ? daysKept(fruit, entry) : null,
      };
    }),
  );
}

function daysKept({ pick }: Fruit, { ended_on }: Keeping): number | null {
  const [picked, ended] = [pick?.picked_on, ended_on];
  if (!picked?.first || picked.first !== picked.last || !ended.first || ended.first !== ended.last) return null;
  const days = daysBetween(picked.first, ended.first);
  return days < 0 ? null : days;
}
