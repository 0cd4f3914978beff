import { evaporationCut, type Mulch } from '../../agronomy/mulched-coefficient.ts';
import { addDays, type Day, daysBetween } from '../../day.ts';
import type { Crop, Garden } from '../../garden/garden.ts';
import type { SoilRecord } from '../../records/soil.ts';
import type { CropYear } from '../year/crop-year.ts';
import { nearestRow } from './crop-stages.ts';
import { mulchOn } from './mulch-on.ts';
import type { SpotWater } from './spot-water.ts';
import type { ThirstRecord } from './thirst-record.ts';
import { type UsualGround, usualGround } from './usual-ground.ts';
import { type Growing, type StageNeed, weekNeeds } from './week-need.ts';

/** What a crop's usual spot will want in the season that is planned. */
export interface CropPlan {
  readonly crop: Crop;
  readonly growing: Growing & { readonly ground: UsualGround };
  /** Its lengths of stages come from this garden's last season of it, or from sources. */
  readonly stages_from: 'records' | 'sources';
  /** Stages whose weeks were read in five years at least; may be empty. */
  readonly stages: readonly StageNeed[];
}

const BARE: Mulch = { kind: 'none' };

/** Null where traits, ground or a day of planting are unknown. `past`: this crop's spots of the seasons so far, the last season last. */
export function cropPlan(
  garden: Garden,
  { crop, plan, planting_out, bands }: CropYear,
  past: readonly { readonly season: Garden['seasons'][number]; readonly water: SpotWater }[],
  thirst: ThirstRecord,
  soils: readonly SoilRecord[],
): CropPlan | null {
  const ground = usualGround(garden, crop, soils);
  if (!crop.water || !plan || !planting_out || !ground) return null;
  const planted = planting_out.day;
  const latest = past.filter(({ season }) => season === past.at(-1)?.season);
  const own = middleOne(
    latest.flatMap(({ water: { stages } }) => (stages.full_from === 'records' ? [stages] : [])),
    ({ days }) => days,
  );
  const lengths = own?.lengths ?? nearestRow(crop, bands.pick?.to_days ?? daysBetween(planted, plan.ends_on) + 1);
  if (!lengths) return null;
  const growing = {
    traits: crop.water,
    lengths,
    planted,
    climate: thirst.climate(planted, plan.ends_on),
    ground,
    mulch: middleOne(latest.map(mulchWhenFull), evaporationCut) ?? BARE,
  };
  return { crop, growing, stages_from: own ? 'records' : 'sources', stages: weekNeeds(growing, thirst) };
}

/** The middle one of several by some measure, for one spot may be odd; the lower of two. */
function middleOne<T>(several: readonly T[], measure: (one: T) => number): T | null {
  const sorted = [...several].sort((a, b) => measure(a) - measure(b));
  return sorted[Math.floor((sorted.length - 1) / 2)] ?? null;
}

/** What lay on a spot's ground when its leaves were full. */
function mulchWhenFull({ season, water }: { season: Garden['seasons'][number]; water: SpotWater }): Mulch {
  const planted: Day | undefined = water.days[0]?.day;
  const { initial_days, development_days } = water.stages.lengths;
  return planted ? mulchOn(season, water.spot, water.crop)(addDays(planted, initial_days + development_days)) : BARE;
}
