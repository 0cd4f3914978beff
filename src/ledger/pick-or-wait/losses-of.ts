import type { GardenRecord } from '../../records/garden.ts';
import { LOSS_KEYS } from '../../records/losses.ts';
import { type Losses, USUAL_LOSSES } from '../../statistics/pick-or-wait/loss.ts';

/** As the grower named them; the house's words stand for the others. */
export const lossesOf = ({ losses }: Pick<GardenRecord, 'losses'>): Losses =>
  Object.fromEntries(LOSS_KEYS.map((key) => [key, losses?.[key] ?? USUAL_LOSSES[key]])) as unknown as Losses;
