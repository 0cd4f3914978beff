/**
 * The water in the root zone, day by day: FAO Irrigation and Drainage Paper 56 (Allen et al. 1998), chapter 8. Every
 * depth is mm over the ground that holds the roots; leaves may spread over more ground than that (`canopy_ratio`).
 * What runs off, comes up from below or stays on the leaves is not in it.
 */
import type { TopSoil } from './bare-soil.ts';
import { shareOnDay, stressFactor } from './soil-water.ts';
import { stepTopSoil, type TopState, type TopStep } from './top-soil.ts';
import { layerDay, type WettingOrder } from './wetting-order.ts';

export interface RootZone {
  /** All the water the roots can draw, above 0. */
  readonly taw_mm: number;
  /** The share of it that goes without harm at 5 mm a day, above 0 and below 1. */
  readonly depletion_share: number;
  /** Whether that share follows the day's thirst. */
  readonly adjust_p: boolean;
}

/** How far below full. */
export interface WaterState {
  /** 0 to TAW. */
  readonly root_mm: number;
  /** Null where a single coefficient keeps no account of the top layer. */
  readonly top: TopState | null;
}

/** One coefficient for plant and soil together. */
export interface SingleCoefficient {
  readonly kind: 'single';
  /** A mulch is already in it. */
  readonly kc: number;
}

/** The plant's coefficient, and what the soil's own is reckoned from. */
export interface DualCoefficient {
  readonly kind: 'dual';
  readonly kcb: number;
  readonly kc_max: number;
  /** The share of the root ground under leaves, 0 to 0.99. */
  readonly cover: number;
  readonly soil: TopSoil;
  /** What a mulch leaves of the evaporation, 0 to 1; 1 on bare ground. */
  readonly evaporation_kept: number;
  /** The share of the root ground that the day's watering wets, above 0 and at most 1. Rain wets all. */
  readonly wetted_share: number;
  readonly drip: boolean;
}

export interface WaterDay {
  readonly eto_mm: number;
  readonly rain_mm: number;
  readonly watering_mm: number;
  /** Ground the crop's coefficient holds for, to each square metre of root ground; above 0. */
  readonly canopy_ratio: number;
  readonly coefficient: SingleCoefficient | DualCoefficient;
}

export interface WaterStep {
  readonly end: WaterState;
  /** The share that went without harm on this day. */
  readonly depletion_share: number;
  /** Share of its thirst the plant could still, by the depletion it met. */
  readonly ks: number;
  /** What would have been drunk and evaporated without any drought. */
  readonly demand_mm: number;
  /** What was. */
  readonly etc_mm: number;
  /** Its two parts; null for a single coefficient, which does not tell them apart. */
  readonly transpiration_mm: number | null;
  readonly evaporation_mm: number | null;
  /** Water that ran through below the roots. */
  readonly percolation_mm: number;
  /** Rain too little to count. */
  readonly ignored_rain_mm: number;
  /** Thirst, already lessened by Ks, that the empty root zone could not still. */
  readonly unmet_mm: number;
  /** Evaporation from the top layer after the root zone was empty: its surface dries beyond what roots can draw. */
  readonly below_wilting_mm: number;
  /** Null for a single coefficient. */
  readonly top: TopStep | null;
}

/** Rain below this share of the day's ETo evaporates from where it falls (the paper, at Eq. 85). */
const COUNTS_FROM = 0.2;

/**
 * One day of the root zone, Eq. 85 to 88, so that
 * end - start = -(rain - ignored) - watering + etc + percolation - below_wilting, all in mm.
 * Plants take Ks · Kc · ETo (Eq. 81) or Ks · Kcb · ETo beside the soil's evaporation (Eq. 80), times the canopy's ratio;
 * the soil evaporates from the root ground alone. Ks comes from the depletion the plants meet: after the water in the
 * early order (example 38), at the start of the day in the late one (example 37; without water they are the same). The
 * draw ends where the root zone is empty. The share p follows the thirst of a square metre of crop, not of root ground:
 * the paper's table is for fields, where the two are one.
 * The paper lets the account ignore rain below 0.2 ETo, above all with a single coefficient; here both do.
 * Throws RangeError for a number out of its range, a depletion beyond TAW or TEW, or a dual coefficient without a top.
 */
export function stepRootZone(zone: RootZone, start: WaterState, day: WaterDay, order: WettingOrder): WaterStep {
  checkDay(zone, start, day);
  const { eto_mm, rain_mm, watering_mm, canopy_ratio, coefficient } = day;
  const ignored_rain_mm = rain_mm < COUNTS_FROM * eto_mm ? rain_mm : 0;
  const counted_mm = rain_mm - ignored_rain_mm;
  const top = topStep(start, day, counted_mm, order);
  const evaporation_mm = top?.evaporation_mm ?? 0;
  const plant_mm = (coefficient.kind === 'single' ? coefficient.kc : coefficient.kcb) * eto_mm;
  const thirst_mm = plant_mm * canopy_ratio;
  const depletion_share = zone.adjust_p
    ? shareOnDay(zone.depletion_share, plant_mm + evaporation_mm)
    : zone.depletion_share;

  const ksAt = (seen_mm: number): number => stressFactor(seen_mm, zone.taw_mm, depletion_share);
  const soilAt = (seen_mm: number): number => Math.min(evaporation_mm, zone.taw_mm - seen_mm);
  const drinkAt = (seen_mm: number): number =>
    Math.min(ksAt(seen_mm) * thirst_mm, zone.taw_mm - seen_mm - soilAt(seen_mm));
  const { seen_mm, end_mm, through_mm } = layerDay(
    start.root_mm,
    counted_mm + watering_mm,
    order,
    (at_mm) => soilAt(at_mm) + drinkAt(at_mm),
  );
  const drunk_mm = drinkAt(seen_mm);
  return {
    end: { root_mm: Math.min(end_mm, zone.taw_mm), top: top?.end ?? null },
    depletion_share,
    ks: ksAt(seen_mm),
    demand_mm: thirst_mm + evaporation_mm,
    etc_mm: drunk_mm + evaporation_mm,
    transpiration_mm: top && drunk_mm,
    evaporation_mm: top && evaporation_mm,
    percolation_mm: through_mm,
    ignored_rain_mm,
    unmet_mm: ksAt(seen_mm) * thirst_mm - drunk_mm,
    below_wilting_mm: evaporation_mm - soilAt(seen_mm),
    top,
  };
}

/** The days one after the other, each from the end of the one before. Throws as stepRootZone does. */
export function stepAlong(
  zone: RootZone,
  start: WaterState,
  days: readonly WaterDay[],
  order: WettingOrder,
): WaterStep[] {
  const steps: WaterStep[] = [];
  for (const day of days) steps.push(stepRootZone(zone, steps.at(-1)?.end ?? start, day, order));
  return steps;
}

function topStep({ top }: WaterState, day: WaterDay, rain_mm: number, order: WettingOrder): TopStep | null {
  const { eto_mm, watering_mm, coefficient } = day;
  if (coefficient.kind === 'single') return null;
  if (top === null) throw new RangeError('invalid top: null with a dual coefficient');
  return stepTopSoil(top, { ...coefficient, eto_mm, rain_mm, watering_mm }, order);
}

function checkDay({ taw_mm, depletion_share }: RootZone, { root_mm }: WaterState, day: WaterDay): void {
  check('taw_mm', taw_mm, taw_mm > 0);
  check('depletion_share', depletion_share, depletion_share > 0 && depletion_share < 1);
  check('root_mm', root_mm, root_mm >= 0 && root_mm <= taw_mm);
  const { eto_mm, rain_mm, watering_mm, canopy_ratio, coefficient } = day;
  for (const [name, value] of Object.entries({ eto_mm, rain_mm, watering_mm })) check(name, value, value >= 0);
  check('canopy_ratio', canopy_ratio, canopy_ratio > 0);
  if (coefficient.kind === 'single') check('kc', coefficient.kc, coefficient.kc >= 0);
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
