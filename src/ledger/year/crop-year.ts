import { addDays, type Day } from '../../day.ts';
import type { Crop, Garden } from '../../garden/garden.ts';
import { type OwnOffsets, type OwnSpan, ownOffsets } from './own-offsets.ts';
import { type PlanSeason, planSeasonOf } from './plan-season.ts';
import { type PlantingOut, plantingOutOf } from './planting-out.ts';

/** The steps of a crop's year, in its order. */
export const YEAR_STEPS = ['sow', 'plant-out', 'mulch', 'feed-leaf', 'set', 'pick'] as const;
export type YearStep = (typeof YEAR_STEPS)[number];

/** From when to when a step lies: in days from planting out, and as dates where that is known. */
export interface YearBand {
  readonly step: YearStep;
  readonly from_days: number;
  readonly to_days: number;
  readonly first: Day | null;
  readonly last: Day | null;
  /** This garden's own records, published sources of the crop's file, or common practice without a source. */
  readonly basis: 'own' | 'sources' | 'practice';
  /** Seasons under an own band; 0 for the others. */
  readonly seasons: number;
  /** Ids of sources.yaml; empty for an own band. */
  readonly sources: readonly string[];
}

/** One crop's year in outline. */
export interface CropYear {
  readonly crop: Crop;
  readonly plan: PlanSeason | null;
  /** Null when neither plantings nor a record of the weather tell a date; then days from planting out stand alone. */
  readonly planting_out: PlantingOut | null;
  /** Null where neither the records nor the crop's file tell. */
  readonly bands: Readonly<Record<YearStep, YearBand | null>>;
}

/** Mulch waits until the ground is warm and seedlings are past slugs: two to four weeks, common practice, no source. */
const MULCH = { from: 14, to: 28 };

export function cropYear(garden: Garden, today: Day | null, crop: Crop): CropYear {
  const plan = planSeasonOf(garden, today);
  const planting_out = plantingOutOf(garden, plan, crop);
  const own = ownOffsets(garden.seasons, crop.id);
  const band = (step: YearStep, told: Told | null): YearBand | null =>
    told && {
      step,
      ...told,
      first: planting_out && addDays(planting_out.day, told.from_days),
      last: planting_out && addDays(planting_out.day, told.to_days),
    };
  const set = ownOr(own.set, statedSet(crop));
  return {
    crop,
    plan,
    planting_out,
    bands: {
      sow: band('sow', ownOr(own.sow, statedSow(crop))),
      'plant-out': planting_out && {
        ...(band('plant-out', { ...PRACTICE, from_days: 0, to_days: 0 }) as YearBand),
        first: planting_out.first,
        last: planting_out.last,
        basis: 'own',
        seasons: planting_out.count,
      },
      mulch: band('mulch', ownOr(own.mulch, { ...PRACTICE, from_days: MULCH.from, to_days: MULCH.to })),
      'feed-leaf': band('feed-leaf', leafUntil(own, set)),
      set: band('set', set),
      pick: band('pick', ownOr(own.pick, statedPick(crop))),
    },
  };
}

type Told = Pick<YearBand, 'from_days' | 'to_days' | 'basis' | 'seasons' | 'sources'>;

const PRACTICE = { basis: 'practice' as const, seasons: 0, sources: ['trade-practice'] };

function ownOr(own: OwnSpan | null, stated: Told | null): Told | null {
  return own ? { from_days: own.from, to_days: own.to, basis: 'own', seasons: own.seasons, sources: [] } : stated;
}

const statedSow = ({ sowing }: Crop): Told | null =>
  sowing && {
    from_days: -sowing.pot_days_high,
    to_days: -sowing.pot_days_low,
    basis: 'sources',
    seasons: 0,
    sources: sowing.sources,
  };

/** The first fruits set so many days before the first are ripe; how long they go on setting no source says. */
function statedSet({ ripe_days }: Crop): Told | null {
  const planted = ripe_days?.planted_days_low ?? null;
  if (!ripe_days || planted === null) return null;
  const to_days = planted - ripe_days.set_days_low;
  const from_days = Math.max(0, planted - ripe_days.set_days_high);
  return { from_days, to_days, basis: 'sources', seasons: 0, sources: ripe_days.sources };
}

function statedPick({ ripe_days, season }: Crop): Told | null {
  const planted = ripe_days?.planted_days_low ?? null;
  if (!ripe_days || planted === null) return null;
  const to_days = Math.max(planted, season?.days_high ?? planted);
  return {
    from_days: planted,
    to_days,
    basis: 'sources',
    seasons: 0,
    sources: [...new Set([...ripe_days.sources, ...(season?.sources ?? [])])],
  };
}

/** Nitrogen is for leaf: it ends when the first female flower opens, or where that is not written down when fruit sets. */
function leafUntil({ female }: OwnOffsets, set: Told | null): Told | null {
  const flower = female && { from_days: female.from, basis: 'own' as const, seasons: female.seasons, sources: [] };
  const end = flower ?? set;
  return end && { basis: end.basis, seasons: end.seasons, sources: end.sources, from_days: 0, to_days: end.from_days };
}
