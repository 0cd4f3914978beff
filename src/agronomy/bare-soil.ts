/**
 * What the ground between the leaves loses to the air: the soil's part of the dual crop coefficient, FAO Irrigation and
 * Drainage Paper 56 (Allen et al. 1998), chapter 7. A thin top layer is wetted, dries at the air's rate while it is
 * moist, and ever slower after that. Every function throws RangeError for a number out of the range it names.
 */
import { type Climate, inClimate } from './crop-coefficient.ts';
import type { SoilHold } from './soil-water.ts';

/** Water of the top layer, mm: all that can evaporate, and what leaves at the full rate. 0 <= rew_mm < tew_mm. */
export interface TopSoil {
  readonly tew_mm: number;
  readonly rew_mm: number;
}

/** No cover is taken as complete: a little ground always shows. */
const MOST_COVER = 0.99;

/**
 * The largest coefficient the energy of the day allows, Eq. 72: 1.2 moved to the climate, or Kcb + 0.05 where that is
 * more. Climate and height are held as in inClimate.
 */
export function largestCoefficient(kcb: number, climate: Climate, height_m: number): number {
  check('kcb', kcb, kcb >= 0);
  return Math.max(inClimate(1.2, climate, height_m), kcb + 0.05);
}

/**
 * The share of the ground under leaves, 0 to 0.99, as the coefficients tell it: ((Kcb - Kcmin) / (Kcmax - Kcmin)) to
 * the power 1 + 0.5 h, Eq. 76. `kc_min` is that of dry bare ground, 0.15 in example 32, and is below kc_max; no cover where
 * Kcb is no larger than it.
 */
export function coverFrom(kcb: number, kc_min: number, kc_max: number, height_m: number): number {
  check('kcb', kcb, kcb >= 0);
  check('kc_min', kc_min, kc_min >= 0 && kc_min < kc_max);
  check('kc_max', kc_max, true);
  check('height_m', height_m, height_m >= 0);
  const grown = Math.max(kcb - kc_min, 0) / (kc_max - kc_min);
  return Math.min(grown ** (1 + 0.5 * height_m), MOST_COVER);
}

/**
 * The share of the ground that is both wetted and open to the sun: the lesser of 1 - cover and the wetted share, Eq. 75.
 * Drip wets chiefly under the leaves, so its share counts 1 - 2/3 cover of itself (page 147). Cover 0 to 0.99, wetted
 * share above 0 and at most 1.
 */
export function exposedShare(cover: number, wetted_share: number, drip: boolean): number {
  check('cover', cover, cover >= 0 && cover <= MOST_COVER);
  check('wetted_share', wetted_share, wetted_share > 0 && wetted_share <= 1);
  return Math.min(1 - cover, wetted_share * (drip ? 1 - (2 / 3) * cover : 1));
}

/**
 * Water that can evaporate from the top layer, mm: 1000 (θFC - 0.5 θWP) Ze, Eq. 73. The layer is 0.10 to 0.15 m deep
 * in the paper.
 */
export function totalEvaporable({ field_capacity, wilting_point }: SoilHold, depth_m: number): number {
  check('wilting_point', wilting_point, wilting_point >= 0);
  check('field_capacity', field_capacity, field_capacity > wilting_point && field_capacity <= 1);
  check('depth_m', depth_m, depth_m >= 0);
  return 1000 * (field_capacity - 0.5 * wilting_point) * depth_m;
}

/**
 * How freely the top layer still gives off water, 1 down to 0: (TEW - De) / (TEW - REW) once its depletion De is beyond
 * REW, Eq. 74.
 */
export function dryingFactor({ tew_mm, rew_mm }: TopSoil, depletion_mm: number): number {
  check('rew_mm', rew_mm, rew_mm >= 0 && rew_mm < tew_mm);
  check('tew_mm', tew_mm, true);
  check('depletion_mm', depletion_mm, depletion_mm >= 0);
  return Math.min(Math.max((tew_mm - depletion_mm) / (tew_mm - rew_mm), 0), 1);
}

/**
 * The coefficient of evaporation, Eq. 71: Kr (Kcmax - Kcb), but no more than the exposed share of Kcmax. 0 where Kcb is
 * the larger.
 */
export function evaporationCoefficient(drying: number, kc_max: number, kcb: number, exposed: number): number {
  check('drying', drying, drying >= 0 && drying <= 1);
  check('kc_max', kc_max, kc_max >= 0);
  check('kcb', kcb, kcb >= 0);
  check('exposed', exposed, exposed >= 0 && exposed <= 1);
  return Math.max(Math.min(drying * (kc_max - kcb), exposed * kc_max), 0);
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
