import { stepRootZone, type WaterState } from '../../agronomy/root-zone.ts';
import { readilyAvailable } from '../../agronomy/soil-water.ts';
import { type CropWater, rootZoneOf, type Weathered, waterDay } from './crop-water.ts';
import { FULL } from './spot-water.ts';

/** Weather of the plan’s days, in order. */
export type PlannedWeather = readonly Pick<Weathered, 'eto_mm' | 'rain_mm'>[];

/** A crop’s spots in the plan. */
export interface PlannedCrop {
  readonly water: CropWater;
  readonly mulch: Weathered['mulch'];
  readonly spots: number;
  /** Day of the crop’s life on the first day of the plan, 1 on the day of planting; below 1 it is not planted yet. */
  readonly starts_at: number;
  /** Of its roots’ water, the share that is gone on the first morning; 0 is full. */
  readonly used_share: number;
}

/**
 * Litres a day that all spots of a crop want: on a morning on which more is gone than goes without harm, as much as
 * brings them back to that line: the least that keeps them near it, and rain counts first. Ground that is drier at the
 * start is taken to be at the line, for nobody drenches a dry spot at once. Null where the soil’s figures are not known.
 */
export function planWants(crop: PlannedCrop, weather: PlannedWeather): number[] | null {
  const zone = rootZoneOf(crop.water);
  if (!zone) return null;
  const { root_m2 } = crop.water.ground;
  const line_mm = readilyAvailable(zone.taw_mm, zone.depletion_share);
  let state: WaterState = { ...FULL, root_mm: Math.min(crop.used_share * zone.taw_mm, line_mm) };
  return weather.map(({ eto_mm, rain_mm }, index) => {
    const day_number = crop.starts_at + index;
    if (day_number < 1) return 0;
    const given_l = Math.max(0, state.root_mm - line_mm) * root_m2;
    const asked = waterDay(crop.water, day_number, { eto_mm, rain_mm, given_l, drip: false, mulch: crop.mulch });
    if (asked) state = stepRootZone(zone, state, asked, 'early').end;
    return given_l * crop.spots;
  });
}
