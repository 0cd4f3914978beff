import type { Garden, Season } from '../../src/garden/garden.ts';
import { isFromTank } from '../../src/ledger/water/given.ts';

/** Keys of waterings drawn from the tank. */
export const tankWaterings = (garden: Garden, { events }: Season): string[] =>
  events.waterings.filter((watering) => isFromTank(garden, watering)).map(({ key }) => key);
