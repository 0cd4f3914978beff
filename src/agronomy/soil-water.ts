/**
 * How much water the roots can reach, how far it may go down before the plants feel it, and what they feel then: FAO
 * Irrigation and Drainage Paper 56 (Allen et al. 1998), chapter 8. Every function throws RangeError for a number out of
 * the range it names.
 */

/** Water a soil holds, m³ a m³: after it has drained, and when plants can draw no more. 0 <= wilting < field <= 1. */
export interface SoilHold {
  readonly field_capacity: number;
  readonly wilting_point: number;
}

/** The paper's limits for the share that may be used up. */
const LEAST_SHARE = 0.1;
const MOST_SHARE = 0.8;

/** Water between the two, mm: 1000 (θFC - θWP) Zr, Eq. 82. */
export function totalAvailable({ field_capacity, wilting_point }: SoilHold, root_m: number): number {
  check('wilting_point', wilting_point, wilting_point >= 0);
  check('field_capacity', field_capacity, field_capacity > wilting_point && field_capacity <= 1);
  check('root_m', root_m, root_m >= 0);
  return 1000 * (field_capacity - wilting_point) * root_m;
}

/** The part of it that goes without harm, mm: p · TAW, Eq. 83. Share above 0 and below 1. */
export function readilyAvailable(taw_mm: number, share: number): number {
  check('taw_mm', taw_mm, taw_mm >= 0);
  check('share', share, share > 0 && share < 1);
  return share * taw_mm;
}

/**
 * The share that goes without harm on a day of this thirst: p + 0.04 (5 - ETc), held to 0.1 to 0.8 (page 162 and table
 * 22, which is for 5 mm a day). ETc is the unstressed crop's, mm a day.
 */
export function shareOnDay(share_at_5_mm: number, etc_mm: number): number {
  check('share', share_at_5_mm, share_at_5_mm > 0 && share_at_5_mm < 1);
  check('etc_mm', etc_mm, etc_mm >= 0);
  return Math.min(Math.max(share_at_5_mm + 0.04 * (5 - etc_mm), LEAST_SHARE), MOST_SHARE);
}

/**
 * How much of its thirst a plant can still, 1 down to 0: (TAW - Dr) / ((1 - p) TAW) once the depletion Dr is beyond
 * p · TAW, Eq. 84. taw_mm above 0.
 */
export function stressFactor(depletion_mm: number, taw_mm: number, share: number): number {
  check('depletion_mm', depletion_mm, depletion_mm >= 0);
  check('taw_mm', taw_mm, taw_mm > 0);
  if (depletion_mm <= readilyAvailable(taw_mm, share)) return 1;
  return Math.max((taw_mm - depletion_mm) / ((1 - share) * taw_mm), 0);
}

/**
 * The season's yield as a share of a full one, when the plants had this share of their full water: 1 - Ky (1 - ETa/ETc),
 * Eq. 90 (its number from memory; Eq. 103 is the same turned round), and nothing below 0. Ky above 0.
 */
export function yieldShare(water_share: number, ky: number): number {
  check('water_share', water_share, water_share >= 0 && water_share <= 1);
  check('ky', ky, ky > 0);
  return Math.max(1 - ky * (1 - water_share), 0);
}

/**
 * The season's mean stress factor told from a yield and a full one, its share: 1 - (1 - Ya/Ym) / Ky, Eq. 103. Held at 0.
 * It lays the whole loss to drought.
 */
export function stressFromYield(yield_share: number, ky: number): number {
  check('yield_share', yield_share, yield_share >= 0 && yield_share <= 1);
  check('ky', ky, ky > 0);
  return Math.max(1 - (1 - yield_share) / ky, 0);
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
