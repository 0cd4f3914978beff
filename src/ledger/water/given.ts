import type { Dated } from '../../dated.ts';
import { addDays, type Day, daysBetween } from '../../day.ts';
import type { EventOf } from '../../garden/event.ts';
import type { Garden, Season } from '../../garden/garden.ts';
import { measuresOf } from '../../garden/measures.ts';

/** Water that one spot was given on one day. */
export interface Giving {
  readonly spot: string;
  readonly day: Day;
  readonly litres: number;
  /** Counted, or told in a word and then reckoned in cans. */
  readonly told: 'counted' | 'word';
  readonly drip: boolean;
  /** Drawn from the tank. */
  readonly from_tank: boolean;
  /** Key of the record. */
  readonly key: string;
}

/** A word for water, in cans a spot: a judgement, no source. A watering without an amount is “some”. */
const CANS_OF_A_WORD = { little: 0.5, some: 1, plenty: 2 } as const;

/** All water given in a season by spot and day, the first day first; over a span of days in equal parts. What has no day is left out. */
export function givings(garden: Garden, season: Season): Giving[] {
  const planted = [...new Set(season.plantings.map(({ spot }) => spot.id))];
  return season.events.waterings
    .flatMap((watering) => {
      const spots = watering.spots ?? planted;
      const days = daysOf(watering.watered_on);
      const { litres, told } = eachSpot(garden, watering, spots.length);
      return days.flatMap((day) =>
        spots.map((spot) => ({
          spot,
          day,
          litres: litres / days.length,
          told,
          drip: watering.how === 'drip',
          from_tank: isFromTank(garden, watering),
          key: watering.key,
        })),
      );
    })
    .sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : a.spot < b.spot ? -1 : 1));
}

/** Told so, or not told in a garden that has a tank. */
export const isFromTank = ({ about }: Garden, { from }: EventOf<'waterings'>): boolean =>
  about.tank !== null && (from ?? 'tank') === 'tank';

/** The garden's own flow stands for one nobody measured at the time. */
function eachSpot(
  { about }: Garden,
  { cans_each, cans, volume_l, minutes, flow_l_min, roughly }: EventOf<'waterings'>,
  spots: number,
): { litres: number; told: Giving['told'] } {
  const { can_l } = measuresOf(about);
  if (cans_each !== null) return { litres: cans_each * can_l, told: 'counted' };
  const flow = flow_l_min ?? about.tank?.flow_l_min ?? null;
  const together =
    cans !== null ? cans * can_l : (volume_l ?? (minutes !== null && flow !== null ? minutes * flow : null));
  if (together !== null) return { litres: spots === 0 ? 0 : together / spots, told: 'counted' };
  return { litres: CANS_OF_A_WORD[roughly ?? 'some'] * can_l, told: 'word' };
}

const daysOf = ({ first, last }: Dated): Day[] =>
  first === null ? [] : Array.from({ length: daysBetween(first, last) + 1 }, (_, index) => addDays(first, index));
