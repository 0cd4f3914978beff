/**
 * Worked examples of R.G. Allen, L.S. Pereira, D. Raes & M. Smith, Crop evapotranspiration, FAO Irrigation and Drainage
 * Paper 56, Rome 1998, chapters 8 and 9 (www.fao.org/4/x0490e/x0490e0e.htm; read).
 */

/** Example 36: all the water in reach and the part that goes without harm, mm, printed whole. */
export const EXAMPLE_36 = {
  soils: {
    'loamy sand': { field_capacity: 0.15, wilting_point: 0.06 },
    silt: { field_capacity: 0.32, wilting_point: 0.15 },
    'silty clay': { field_capacity: 0.35, wilting_point: 0.23 },
  },
  crops: [
    {
      crop: 'onion',
      root_m: 0.4,
      share: 0.3,
      'loamy sand': ['36', '11'],
      silt: ['68', '20'],
      'silty clay': ['48', '14'],
    },
    {
      crop: 'tomato',
      root_m: 0.8,
      share: 0.4,
      'loamy sand': ['72', '29'],
      silt: ['136', '54'],
      'silty clay': ['96', '38'],
    },
    {
      crop: 'maize',
      root_m: 1.2,
      share: 0.55,
      'loamy sand': ['108', '59'],
      silt: ['204', '112'],
      'silty clay': ['144', '79'],
    },
  ],
} as const;

/**
 * Example 37: ten days without water. Columns: day, depletion at the start, Ks, ETc adjusted, depletion at the end; mm.
 * Ks is that of the depletion at the start of the day and the share is not adjusted. Its silt has a wilting point of
 * 0.12, that of example 36 one of 0.15: each keeps its own.
 */
export const EXAMPLE_37 = {
  hold: { field_capacity: 0.32, wilting_point: 0.12 },
  root_m: 0.8,
  share: 0.4,
  taw: '160',
  raw: '64',
  depletion_mm: 55,
  eto_mm: 5,
  kc: 1.2,
  off_mm: 0.06,
  days: [
    [1, 55, '1.00', 6, 61],
    [2, 61, '1.00', 6, 67],
    [3, 67, '0.97', 5.8, 72.8],
    [4, 72.8, '0.91', 5.4, 78.3],
    [5, 78.3, '0.85', 5.1, 83.4],
    [6, 83.4, '0.80', 4.8, 88.2],
    [7, 88.2, '0.75', 4.5, 92.6],
    [8, 92.6, '0.70', 4.2, 96.9],
    [9, 96.9, '0.66', 3.9, 100.8],
    [10, 100.8, '0.62', 3.7, 104.5],
  ] as const,
};

/**
 * Example 38, the soil and days of example 35 with a root zone that grows. Columns: day, depth of roots m, rain, watering,
 * ETc, water run through, depletion at the end; mm, printed whole but for ETc. The water comes early in the day: on day 1
 * the roots start 23 mm down, 40 come, 17 run through and 5.5 are drunk, so 5 are missing. Eq. 88 as it is written
 * instead gives 40 - 5.5 - 23 = 11.5 run through and none missing. By the errata of 2006 the example was reckoned anew
 * with example 35 (new table not seen).
 */
export const EXAMPLE_38 = {
  hold: { field_capacity: 0.23, wilting_point: 0.1 },
  share: 0.6,
  depletion_mm: 23,
  off_mm: 1,
  late_first_day: { through: '11.5', end: '0' },
  days: [
    [1, 0.3, 0, 40, 5.5, 17, 5],
    [2, 0.31, 0, 0, 6.1, 0, 12],
    [3, 0.31, 0, 0, 4, 0, 16],
    [4, 0.32, 0, 0, 2.9, 0, 18],
    [5, 0.32, 0, 0, 2.5, 0, 21],
    [6, 0.33, 6, 0, 2.7, 0, 18],
    [7, 0.33, 0, 0, 4.7, 0, 22],
    [8, 0.34, 0, 0, 2.8, 0, 25],
    [9, 0.34, 0, 0, 2.2, 0, 27],
    [10, 0.35, 0, 27, 6.3, 0, 6],
  ] as const,
};

/** Example 39, its row without salt: RAW is 0.4 of TAW. */
export const EXAMPLE_39 = {
  taw_mm: 110,
  share: 0.4,
  raw: '44',
  depletions: [
    [50, '0.91'],
    [60, '0.76'],
    [70, '0.61'],
    [80, '0.45'],
    [90, '0.30'],
    [100, '0.15'],
  ] as const,
};

/** Example 44: beans, a yield of 1100 where 1800 kg/ha were possible. `exact` is 1 - (700 / 1800) / 1.15. */
export const EXAMPLE_44 = { yield_kg: 1100, full_yield_kg: 1800, ky: 1.15, printed: '0.66', exact: 0.6618357488 };

/** Page 162: p + 0.04 (5 - ETc), held to 0.1 to 0.8; from 0.40, by hand. */
export const SHARES = [
  [0, 0.6],
  [2, 0.52],
  [5, 0.4],
  [6, 0.36],
  [12.5, 0.1],
  [15, 0.1],
] as const;
