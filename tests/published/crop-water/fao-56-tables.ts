/**
 * Rows of R.G. Allen, L.S. Pereira, D. Raes & M. Smith, Crop evapotranspiration, FAO Irrigation and Drainage Paper 56,
 * Rome 1998, as typed by others: Ames, Pokoski and Thorp, pyfao56, tools/tables.py (read), a public library of the
 * paper's tables that had no part in the crop files but for the stages of cucumber.
 */

/** Tables 12, 17 and 22. */
interface CropRow {
  readonly kc: readonly [number, number, number];
  readonly height_m: number;
  readonly kcb: readonly [number, number, number];
  readonly root_m: readonly [number, number];
  readonly depletion: number;
}

export const CROPS: Readonly<Record<string, CropRow>> = {
  'cucumber fresh market': {
    kc: [0.6, 1, 0.75],
    height_m: 0.3,
    kcb: [0.15, 0.95, 0.7],
    root_m: [0.7, 1.2],
    depletion: 0.5,
  },
  'pumpkin winter squash': {
    kc: [0.5, 1, 0.8],
    height_m: 0.4,
    kcb: [0.15, 0.95, 0.7],
    root_m: [1, 1.5],
    depletion: 0.35,
  },
  'sweet melons': { kc: [0.5, 1.05, 0.75], height_m: 0.4, kcb: [0.15, 1, 0.7], root_m: [0.8, 1.5], depletion: 0.4 },
  /** The paper prints 0.70 to 0.90 and 0.60 to 0.80 for the two ends; the library takes the middle, as the crop file does. */
  tomato: { kc: [0.6, 1.15, 0.8], height_m: 0.6, kcb: [0.15, 1.1, 0.7], root_m: [0.7, 1.5], depletion: 0.4 },
  watermelon: { kc: [0.4, 1, 0.75], height_m: 0.4, kcb: [0.15, 0.95, 0.7], root_m: [0.8, 1.5], depletion: 0.4 },
};

/** Table 11: initial, development, middle, late and the total as printed, in days. */
export const STAGES: Readonly<Record<string, readonly (readonly [number, number, number, number, number])[]>> = {
  cantaloupe: [
    [30, 45, 35, 10, 120],
    [10, 60, 25, 25, 120],
  ],
  cucumber: [
    [20, 30, 40, 15, 105],
    [25, 35, 50, 20, 130],
  ],
  'pumpkin winter squash': [
    [20, 30, 30, 20, 100],
    [25, 35, 35, 25, 120],
  ],
  'sweet melons': [
    [25, 35, 40, 20, 120],
    [30, 30, 50, 30, 140],
    [15, 40, 65, 15, 135],
    [30, 45, 65, 20, 160],
  ],
  tomato: [
    [30, 40, 40, 25, 135],
    [35, 40, 50, 30, 155],
    [25, 40, 60, 30, 155],
    [35, 45, 70, 30, 180],
    [30, 40, 45, 30, 145],
  ],
  'water melons': [
    [20, 30, 30, 30, 110],
    [10, 20, 20, 30, 80],
  ],
};
