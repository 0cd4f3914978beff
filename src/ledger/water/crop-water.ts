import { coverFrom, largestCoefficient, type TopSoil } from '../../agronomy/bare-soil.ts';
import {
  type Climate,
  type Coefficients,
  coefficientOn,
  curveInClimate,
  type StageLengths,
} from '../../agronomy/crop-coefficient.ts';
import { evaporationCut, type Mulch, mulchedBasal } from '../../agronomy/mulched-coefficient.ts';
import type { RootZone, WaterDay } from '../../agronomy/root-zone.ts';
import type { Crop } from '../../garden/garden.ts';
import { type SpotGround, spread } from './spot-ground.ts';

export type WaterTraits = NonNullable<Crop['water']>;

/** What decides how much a spot drinks, but for the day's weather. */
export interface CropWater {
  readonly traits: WaterTraits;
  readonly lengths: StageLengths;
  readonly climate: Climate;
  readonly ground: SpotGround;
}

/** What came on a day, and how it came. */
export interface Weathered {
  readonly eto_mm: number;
  readonly rain_mm: number;
  readonly given_l: number;
  readonly drip: boolean;
  readonly mulch: Mulch;
}

/** The ground between the leaves of a crop just planted: FAO-56 has 0.15 to 0.20 for dry bare soil. */
const KC_MIN = 0.15;
const MOST_COVER = 0.99;
/** Ground wetted by a can where nobody measured the bowl: the middle of what FAO-56, table 20, has for drip. */
const USUAL_WETTED_SHARE = 0.35;

/**
 * The day as the root zone's balance asks for it, day_number 1 on the day of planting: a dual coefficient all through,
 * for it is the bare ground of early summer that loses most. Null where the soil's figures are not known.
 */
export function waterDay(of: CropWater, day_number: number, came: Weathered): WaterDay | null {
  const { traits, ground, climate } = of;
  const soil = topSoilOf(ground);
  if (!soil) return null;
  const kcb = basalOn(of, day_number, came.mulch);
  const kc_max = largestCoefficient(kcb, climate, traits.height_m);
  const canopy_ratio = ground.canopy_m2 / ground.root_m2;
  const shade = coverFrom(kcb, KC_MIN, kc_max, traits.height_m);
  return {
    eto_mm: came.eto_mm,
    rain_mm: came.rain_mm,
    watering_mm: came.given_l / ground.root_m2,
    canopy_ratio,
    coefficient: {
      kind: 'dual',
      kcb,
      kc_max,
      cover: Math.min(shade * canopy_ratio, MOST_COVER),
      soil,
      evaporation_kept: 1 - evaporationCut(came.mulch),
      wetted_share: wettedShare(ground),
      drip: came.drip,
    },
  };
}

/** What the leaves alone would drink, litres: for ground whose soil nobody knows. */
export const leavesDrink = (of: CropWater, day_number: number, { eto_mm, mulch }: Weathered): number =>
  basalOn(of, day_number, mulch) * eto_mm * of.ground.canopy_m2;

/** The roots' store, in a middling soil of its texture; null where its figures are not known. */
export const rootZoneOf = ({ traits, ground }: Pick<CropWater, 'traits' | 'ground'>): RootZone | null =>
  ground.available_mm && { taw_mm: ground.available_mm.middle, depletion_share: traits.depletion, adjust_p: true };

/** The coefficients of the leaves in this climate: Eq. 70 of FAO-56. */
export const basalIn = ({ kcb_initial, kcb_middle, kcb_end, height_m }: WaterTraits, climate: Climate): Coefficients =>
  curveInClimate({ initial: kcb_initial, middle: kcb_middle, end: kcb_end }, climate, height_m);

const basalOn = ({ traits, lengths, climate }: CropWater, day_number: number, mulch: Mulch): number =>
  coefficientOn(day_number, lengths, mulchedBasal(basalIn(traits, climate), mulch));

/** Of the ground that holds the roots, what a watering wets. */
export const wettedShare = ({ bowl_m2, root_m2 }: Pick<SpotGround, 'bowl_m2' | 'root_m2'>): number =>
  bowl_m2 === null ? USUAL_WETTED_SHARE : Math.min(bowl_m2 / root_m2, 1);

function topSoilOf({ soil }: SpotGround): TopSoil | null {
  return (
    soil && {
      rew_mm: spread(soil.readily_evaporated_low_mm, soil.readily_evaporated_high_mm).middle,
      tew_mm: spread(soil.total_evaporated_low_mm, soil.total_evaporated_high_mm).middle,
    }
  );
}
