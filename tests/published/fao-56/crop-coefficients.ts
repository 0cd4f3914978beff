/**
 * Coefficients of R.G. Allen, L.S. Pereira, D. Raes & M. Smith, Crop evapotranspiration, FAO Irrigation and Drainage
 * Paper 56, Rome 1998, chapters 6, 7 and 10 (www.fao.org/4/x0490e/x0490e0b.htm and following; read). `printed` has the
 * digits of the paper; `exact` is the same equation without its rounded steps, from crop-water.R.
 */

/** Example 27: maize, 2 m high, 1.20 in table 12. */
export const EXAMPLE_27 = [
  {
    place: 'Taipei',
    middle: 1.2,
    wind_m_s: 1.3,
    rh_min_pct: 75,
    height_m: 2,
    printed: '1.07',
    exact: 1.06895081099226,
  },
  { place: 'Mocha', middle: 1.2, wind_m_s: 4.6, rh_min_pct: 44, height_m: 2, printed: '1.30', exact: 1.29563048927592 },
];

/**
 * Example 29: dry beans, basal. The end, 0.25, stays as it is: the equation is for 0.45 and more (Eq. 70 read; the same
 * bound of Eq. 65 from memory).
 */
export const EXAMPLE_29 = {
  climate: { wind_m_s: 2.2, rh_min_pct: 30 },
  height_m: 0.4,
  middle: 1.1,
  printed: '1.14',
  exact: 1.13715271308368,
  end: 0.25,
};

interface Curve {
  readonly name: string;
  readonly lengths: readonly [number, number, number, number];
  readonly coefficients: readonly [number, number, number];
  readonly days: readonly { readonly day: number; readonly printed: string; readonly exact: number }[];
}

/**
 * Examples 28 and 30, one crop with its single and its basal coefficients. Day 40 is the 15th of the 25 of the growing
 * stage and has 15/25 of its climb, so Eq. 66 counts a stage's days from 1 and its last day has the next stage's value.
 */
export const CURVES: readonly Curve[] = [
  {
    name: 'example 28',
    lengths: [25, 25, 30, 20],
    coefficients: [0.15, 1.19, 0.35],
    days: [
      { day: 20, printed: '0.15', exact: 0.15 },
      { day: 40, printed: '0.77', exact: 0.774 },
      { day: 70, printed: '1.19', exact: 1.19 },
      { day: 95, printed: '0.56', exact: 0.56 },
    ],
  },
  {
    name: 'example 30',
    lengths: [25, 25, 30, 20],
    coefficients: [0.15, 1.14, 0.25],
    days: [
      { day: 12, printed: '0.15', exact: 0.15 },
      { day: 37, printed: '0.63', exact: 0.6252 },
      { day: 65, printed: '1.14', exact: 1.14 },
      { day: 90, printed: '0.70', exact: 0.695 },
    ],
  },
];

interface Season {
  readonly name: string;
  readonly lengths: readonly [number, number, number, number];
  readonly days: readonly (readonly [number, number])[];
  /** Over its days: times a thirst of the air that stays the same, the season's water. */
  readonly sum: number;
}

/** Watermelon, 0.4, 1.00 and 0.75 in table 12, over the two rows of table 11; by Eq. 66, no publisher printed it. */
export const WATERMELON = { coefficients: [0.4, 1, 0.75] as const, height_m: 0.4 };
export const WATERMELON_SEASONS: readonly Season[] = [
  {
    name: 'April, Italy',
    lengths: [20, 30, 30, 30],
    days: [
      [1, 0.4],
      [20, 0.4],
      [21, 0.42],
      [35, 0.7],
      [50, 1],
      [65, 1],
      [80, 1],
      [95, 0.875],
      [110, 0.75],
    ],
    sum: 85.425,
  },
  {
    name: 'Near East, desert',
    lengths: [10, 20, 20, 30],
    days: [
      [1, 0.4],
      [10, 0.4],
      [20, 0.7],
      [30, 1],
      [50, 1],
      [65, 0.875],
      [80, 0.75],
    ],
    sum: 64.425,
  },
];

/** Its full stage in other climates, by Eq. 62. */
export const WATERMELON_CLIMATES = [
  { wind_m_s: 3, rh_min_pct: 30, exact: 1.05463634277012 },
  { wind_m_s: 2, rh_min_pct: 45, exact: 1 },
  { wind_m_s: 1, rh_min_pct: 80, exact: 0.901654583013791 },
  { wind_m_s: 6, rh_min_pct: 20, exact: 1.1420544912023 },
];

/**
 * Chapter 10, pages 195 to 198 (read). Organic: soil evaporation 5 in 100 less for every 10 in 100 of the ground covered,
 * so 25 less under half cover; watermelon of tables 12 and 17 under it, by the chapter's rules.
 */
export const HALF_STRAW = {
  cover: 0.5,
  cut: 0.25,
  kc: [0.4, 1, 0.75] as const,
  kcb: [0.15, 0.95, 0.7] as const,
  mulched: [0.3, 0.9875, 0.7375] as const,
};

/**
 * Example 45: clear plastic over the whole ground, 15 in 100 off, 0.10 in the first stage. It starts cucumber from 0.4,
 * where table 12 has 0.6 and 0.5; under whole cover the start does not enter.
 */
export const EXAMPLE_45 = {
  kc: [0.4, 1, 0.75] as const,
  kc_initial: 0.1,
  kc_cut: 0.15,
  printed: ['0.10', '0.85', '0.64'],
};

/**
 * Table 25, whole plastic cover, per cent: the cut of Kc, of evaporation, and the change of transpiration, which falls in
 * one crop alone. Table's mean: Kc 10 to 30 less.
 */
export const TABLE_25 = {
  squash: { kc_cut: [5, 15], evaporation_cut: [40, 70], transpiration_gain: [10, 30] },
  cucumber: { kc_cut: [15, 20], evaporation_cut: [40, 60], transpiration_gain: [15, 30] },
  cantaloupe: { kc_cut: [5, 10], evaporation_cut: [80, 80], transpiration_gain: [35, 35] },
  watermelon: { kc_cut: [25, 30], evaporation_cut: [90, 90], transpiration_gain: [-10, -10] },
} as const;
