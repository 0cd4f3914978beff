/** One day of the thin top layer that dries between the leaves: FAO Irrigation and Drainage Paper 56, chapter 7. */
import { dryingFactor, evaporationCoefficient, exposedShare, type TopSoil } from './bare-soil.ts';
import { layerDay, type WettingOrder } from './wetting-order.ts';

/** The layer under the wetted, open part of the ground. */
export interface TopState {
  readonly depletion_mm: number;
  /** The share of the ground wetted last, above 0 and at most 1. */
  readonly wetted_share: number;
  /** Whether that was by drip. */
  readonly drip: boolean;
}

/** Depths over the whole ground. */
export interface TopDay {
  readonly eto_mm: number;
  /** Rain that counts. */
  readonly rain_mm: number;
  readonly watering_mm: number;
  /** Of the watering, above 0 and at most 1; it changes nothing on a day without one. */
  readonly wetted_share: number;
  readonly drip: boolean;
  readonly kcb: number;
  readonly kc_max: number;
  /** The share of the ground under leaves, 0 to 0.99. */
  readonly cover: number;
  /** What a mulch leaves of the evaporation, 0 to 1; 1 on bare ground. */
  readonly evaporation_kept: number;
  readonly soil: TopSoil;
}

export interface TopStep {
  readonly end: TopState;
  readonly drying: number;
  readonly ke: number;
  readonly exposed_share: number;
  /** Over the whole ground, as is the next. */
  readonly evaporation_mm: number;
  /** Evaporation asked for that the layer no longer had. */
  readonly cut_mm: number;
  /** Under the wetted, open part: water that went deeper. */
  readonly through_mm: number;
}

/** Rain from here on wets the whole ground, also after a watering that wetted a part: 3 to 4 mm, page 149 as corrected. */
const WETTING_RAIN_MM = 3;

/**
 * The day of the top layer: Eq. 77, with the wetted share by the rules of page 149 as the errata of 2006 have them (rain
 * of 3 mm and more wets all; else the day's watering its share; else as it was). Evaporation is the mulch's part of
 * Ke · ETo and no more than the layer holds. In the late order the evaporation is that of the ground as it lay before
 * the day's water. The paper's Eq. 79 leaves the day's evaporation out of what goes deeper, as the early order does.
 * Throws RangeError for a depletion beyond TEW or a number out of its range.
 */
export function stepTopSoil(start: TopState, day: TopDay, order: WettingOrder): TopStep {
  const { eto_mm, rain_mm, watering_mm, cover, evaporation_kept, soil } = day;
  const depths = { eto_mm, rain_mm, watering_mm, depletion_mm: start.depletion_mm };
  for (const [name, value] of Object.entries(depths)) check(name, value, value >= 0);
  check('depletion_mm', start.depletion_mm, start.depletion_mm <= soil.tew_mm);
  check('wetted_share', day.wetted_share, day.wetted_share > 0 && day.wetted_share <= 1);
  check('evaporation_kept', evaporation_kept, evaporation_kept >= 0 && evaporation_kept <= 1);
  const wetted = wettedAfter(start, day);
  const lying = order === 'early' ? wetted : start;
  const exposed_share = exposedShare(cover, lying.wetted_share, lying.drip);
  const held = (seen_mm: number): number => soil.tew_mm - seen_mm;
  const keAt = (seen_mm: number): number =>
    evaporationCoefficient(dryingFactor(soil, seen_mm), day.kc_max, day.kcb, exposed_share);
  const askedAt = (seen_mm: number): number => keAt(seen_mm) * eto_mm * evaporation_kept;
  const drawAt = (seen_mm: number): number => Math.min(askedAt(seen_mm) / exposed_share, held(seen_mm));
  const water_mm = rain_mm + (watering_mm > 0 ? watering_mm / wetted.wetted_share : 0);
  const { seen_mm, end_mm, through_mm } = layerDay(start.depletion_mm, water_mm, order, drawAt);
  const evaporation_mm = drawAt(seen_mm) * exposed_share;
  return {
    end: { ...wetted, depletion_mm: Math.min(end_mm, soil.tew_mm) },
    drying: dryingFactor(soil, seen_mm),
    ke: keAt(seen_mm),
    exposed_share,
    evaporation_mm,
    cut_mm: Math.max(askedAt(seen_mm) - evaporation_mm, 0),
    through_mm,
  };
}

function wettedAfter(start: TopState, { rain_mm, watering_mm, wetted_share, drip }: TopDay): TopState {
  if (rain_mm >= WETTING_RAIN_MM) return { ...start, wetted_share: 1, drip: false };
  return watering_mm > 0 ? { ...start, wetted_share, drip } : start;
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
