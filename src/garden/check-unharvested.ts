import type { Day } from '../day.ts';
import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { PlantingRecord } from '../records/planting.ts';
import type { Planting, Season } from './garden.ts';

/**
 * A warning for each planting of a season that is over of which nothing says whether it bore.
 * A barren mound left out makes the others' mean too high, so nothing has to be written down as nothing.
 */
export function checkUnharvested(
  season: Season,
  entries: readonly Entry<PlantingRecord>[],
  lastDay: Day | null,
): Problem[] {
  const isOver = lastDay !== null && season.ends_on <= lastDay;
  if (!isOver || !season.plantings.some(isTold)) return [];
  const untold = season.plantings.filter((planting) => !isTold(planting)).map(({ id }) => id);
  return entries
    .filter(({ record }) => untold.includes(record.id))
    .map((entry) =>
      problemIn(entry, ['id'], {
        severity: 'warning',
        code: 'harvest-missing',
        message: `nothing says what planting ${entry.record.id} gave`,
        hint: 'if it bore nothing, write a picking with count: 0; left blank, it is left out of all means',
      }),
    );
}

const isTold = ({ fruits, pickings, plants_alive }: Planting): boolean =>
  fruits.length > 0 || pickings.length > 0 || plants_alive === 0;
