import type { Planting } from '../garden/garden.ts';
import type { Harvest } from './harvest.ts';
import { type Measure, tallyOf } from './measure.ts';
import type { SeasonAccount } from './season-account.ts';
import { isComplete } from './tally.ts';

/** One planting of a known variety alone in its spot: the replicate of yield comparisons. */
export interface Mound {
  readonly planting: Planting;
  readonly variety: string;
  readonly spot: string;
  readonly block: string | null;
  /** The measure per plant set. */
  readonly value: number;
  readonly keys: readonly string[];
}

/** Why a planting of a known variety does not count among the mounds of a measure. */
export interface LeftOut {
  readonly planting: Planting;
  readonly code: 'replanted' | 'no-harvest-record' | 'not-all-told' | 'no-plants-set';
}

export interface Mounds {
  readonly mounds: readonly Mound[];
  readonly left_out: readonly LeftOut[];
}

/** The replicates of one crop in one season, by variety and spot. */
export function moundsOf({ season, harvestOf }: SeasonAccount, crop: string, measure: Measure): Mounds {
  const perSpot = new Map<string, number>();
  for (const { spot } of season.plantings) perSpot.set(spot.id, (perSpot.get(spot.id) ?? 0) + 1);
  const mounds: Mound[] = [];
  const leftOut: LeftOut[] = [];
  for (const planting of season.plantings) {
    if (!planting.variety || planting.variety.crop.id !== crop) continue;
    const harvest = harvestOf(planting);
    const code = reasonToLeaveOut(planting, harvest, measure, perSpot.get(planting.spot.id) ?? 1);
    if (code || !harvest) leftOut.push({ planting, code: code ?? 'no-harvest-record' });
    else mounds.push(moundOf(planting, harvest, measure));
  }
  return { mounds, left_out: leftOut };
}

function reasonToLeaveOut(
  planting: Planting,
  harvest: Harvest | null,
  measure: Measure,
  plantings: number,
): LeftOut['code'] | null {
  if (plantings > 1) return 'replanted';
  if (!harvest) return 'no-harvest-record';
  if (planting.plants_set === 0) return 'no-plants-set';
  return isComplete(tallyOf(harvest, measure)) ? null : 'not-all-told';
}

const moundOf = (planting: Planting, harvest: Harvest, measure: Measure): Mound => ({
  planting,
  variety: planting.variety?.id ?? '',
  spot: planting.spot.id,
  block: planting.block,
  value: tallyOf(harvest, measure).sum / planting.plants_set,
  keys: harvest.keys,
});
