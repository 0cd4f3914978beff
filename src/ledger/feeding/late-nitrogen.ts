import type { Dated } from '../../dated.ts';
import { addDays, type Day } from '../../day.ts';
import type { EventOf } from '../../garden/event.ts';
import type { Planting, Season } from '../../garden/garden.ts';
import { reaches } from '../../garden/reaches.ts';
import type { MaterialRecord } from '../../records/material.ts';
import type { CropYear } from '../year/crop-year.ts';
import { bearsNitrogen } from './nitrogen-of.ts';

/** Something with nitrogen, given on the day of the first female flower or after it. */
export interface LateNitrogen {
  readonly given: Dated;
  readonly material: MaterialRecord;
  /** `perhaps`: a feed of which neither a label nor a source tells. */
  readonly bears: 'yes' | 'perhaps';
  readonly spots: readonly string[];
  /** `seen`: the flower was written down; `due`: it was to be expected, by the crop’s year. */
  readonly flower: 'seen' | 'due';
  /** On the very day. */
  readonly same_day: boolean;
  /** Keys of the entry and of the flowers. */
  readonly keys: readonly string[];
}

interface Flower {
  readonly day: Day;
  readonly flower: LateNitrogen['flower'];
  readonly keys: readonly string[];
}

type Feeding = EventOf<'feeding'>;

/** Kinds that are given for their nitrogen, so that a missing label does not excuse them. */
const FEEDS: readonly MaterialRecord['kind'][] = ['manure', 'bought-feed', 'liquid-feed'];

/** Entries of a season that came too late, by day; of a date known loosely, only what is late by any reading. */
export function lateNitrogen(
  season: Season,
  years: readonly CropYear[],
  materials: readonly MaterialRecord[],
): LateNitrogen[] {
  return season.events.feeding.flatMap((entry) => {
    const material = materials.find(({ id }) => id === entry.material);
    if (!material) return [];
    const bears = bearsNitrogen(entry, material);
    if (bears === 'no' || (bears === 'perhaps' && !FEEDS.includes(material.kind))) return [];
    return groupsOf(season, entry, years).map((group) => ({ given: entry.given_on, material, bears, ...group }));
  });
}

type Group = Pick<LateNitrogen, 'spots' | 'flower' | 'same_day' | 'keys'>;

/** The plantings an entry came too late for: those alike stand together. */
function groupsOf(season: Season, entry: Feeding, years: readonly CropYear[]): Group[] {
  const groups = new Map<string, Group>();
  const given = entry.given_on.first;
  for (const planting of season.plantings) {
    const flower = reaches(entry, planting.spot) ? flowerOf(season, planting, years) : null;
    if (!flower || given === null || given < flower.day) continue;
    const same_day = given === flower.day;
    const key = `${flower.flower} ${same_day}`;
    const known = groups.get(key);
    groups.set(key, {
      spots: [...new Set([...(known?.spots ?? []), planting.spot.id])],
      flower: flower.flower,
      same_day,
      keys: [...new Set([...(known?.keys ?? [entry.key]), ...flower.keys])],
    });
  }
  return [...groups.values()];
}

/** The first female flower as it was written down; else the end of feeding for leaf, from the last day of planting. */
function flowerOf({ events }: Season, planting: Planting, years: readonly CropYear[]): Flower | null {
  const [seen] = events.flowering
    .filter(({ what, planting: of }) => what === 'first-female' && of === planting.id)
    .flatMap(({ seen_on, key }) => (seen_on.last ? [{ day: seen_on.last, flower: 'seen' as const, keys: [key] }] : []))
    .sort((a, b) => (a.day < b.day ? -1 : 1));
  if (seen) return seen;
  const band = years.find(({ crop }) => crop.id === planting.variety?.crop.id)?.bands['feed-leaf'];
  const planted = planting.planted_on.last;
  return band && planted ? { day: addDays(planted, band.to_days), flower: 'due', keys: [planting.key] } : null;
}
