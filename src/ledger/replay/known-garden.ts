import type { Day } from '../../day.ts';
import { asOf } from '../../garden/as-of.ts';
import type { Garden } from '../../garden/garden.ts';
import { isReadInMorning, NOTHING_OF_DAY } from '../../garden/morning-station.ts';

/** The garden as known on a day, where of a gauge read in the mornings the rain of the day itself is not known yet. */
export function knownGarden(garden: Garden, day: Day): Garden {
  const known = asOf(garden, day);
  return {
    ...known,
    stations: known.stations.map((station) =>
      isReadInMorning(garden.about, station.id)
        ? { ...station, days: station.days.map((one) => (one.date === day ? { ...one, ...NOTHING_OF_DAY } : one)) }
        : station,
    ),
  };
}
