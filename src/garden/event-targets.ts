import type { FruitRecord } from '../records/fruit.ts';
import type { SpotRecord } from '../records/garden.ts';
import type { LotRecord } from '../records/lot.ts';
import type { PlantingRecord } from '../records/planting.ts';
import type { VarietyRecord } from '../records/variety.ts';
import type { Index } from './index-by-id.ts';

/** What an entry of the diary may point at. */
export interface EventTargets {
  readonly planting: Index<PlantingRecord>;
  readonly fruit: Index<FruitRecord>;
  readonly spot: Index<SpotRecord>;
  readonly variety: Index<VarietyRecord>;
  readonly lot: Index<LotRecord>;
}
