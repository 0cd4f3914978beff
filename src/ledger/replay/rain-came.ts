import { addDays, type Day } from '../../day.ts';
import type { Garden } from '../../garden/garden.ts';
import { ownStation } from '../../garden/own-station.ts';
import { thresholdsOf } from '../../garden/weather-settings.ts';
import type { RainWord } from '../../statistics/pick-or-wait/card.ts';
import { LOOK_DAYS } from '../pick-or-wait/lost-share.ts';
import { isSoaking, isWet } from '../weather/measure.ts';
import { windowsOf } from '../weather/window.ts';

/**
 * The word of a forecast that was never wrong: a soaking day until the next look is "likely", a wet one "maybe", else
 * "none likely". Read off the gauge afterwards; null where a day without a reading leaves it open.
 */
export function rainCame(garden: Garden, looked_on: Day): RainWord | null {
  const station = ownStation(garden);
  if (!station) return null;
  const thresholds = thresholdsOf(garden.about);
  const { days } = windowsOf(station)(addDays(looked_on, 1), addDays(looked_on, LOOK_DAYS));
  if (days.some((day) => isSoaking(day, thresholds))) return 'likely';
  const wet = days.map((day) => isWet(day, thresholds));
  if (wet.includes(null)) return null;
  return wet.includes(true) ? 'maybe' : 'none-likely';
}
