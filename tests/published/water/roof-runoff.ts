/** Rain on roofs, as worked out in print. Areas are footprints, seen from above. */

/**
 * Australian Government, enHealth, Guidance on use of rainwater tanks, 2010, appendix B, page of March 2011 (read):
 * litres = A · (rainfall − B) · area. Its worked example prints 116,160 litres.
 */
export const ENHEALTH_EXAMPLE = {
  footprint_m2: 200,
  rain_mm: 750,
  runoff_share: 0.8,
  wetting_mm: 24,
  printed_l: '116160',
};

/** The same appendix, table B.1, thousands of litres a year; A is 0.8 and B 24 mm. */
export const ENHEALTH_AREAS_M2 = [100, 150, 200, 250, 300, 400, 500] as const;
export const ENHEALTH_TABLE: Readonly<Record<number, readonly number[]>> = {
  150: [10, 15, 20, 25, 30, 40, 50],
  200: [13, 21, 27, 35, 42, 53, 70],
  250: [18, 27, 36, 45, 54, 72, 90],
  300: [22, 33, 44, 55, 66, 88, 110],
  400: [30, 45, 60, 75, 90, 120, 150],
  500: [38, 57, 76, 95, 114, 152, 191],
  600: [46, 69, 92, 115, 138, 184, 230],
  800: [62, 93, 124, 155, 186, 248, 310],
  1000: [78, 117, 156, 195, 234, 312, 390],
  1200: [94, 141, 188, 235, 282, 377, 470],
};

/** Cells of that table that its own formula does not give: rain, area, printed, and what the formula gives to one place. */
export const ENHEALTH_MISPRINTS: readonly (readonly [rain_mm: number, area_m2: number, printed: number, kl: string])[] =
  [
    [200, 100, 13, '14.1'],
    [200, 200, 27, '28.2'],
    [200, 400, 53, '56.3'],
    [500, 500, 191, '190.4'],
    [1200, 400, 377, '376.3'],
  ];

interface InchExample {
  readonly from: string;
  readonly footprint_ft2: number;
  readonly rain_in: number;
  readonly runoff_share: number;
  /** Gallons that a square foot and an inch of rain are taken to give; exactly 144 / 231. */
  readonly gal_ft2_in: number;
  readonly printed_gal: string;
}

/** Worked in feet, inches and US gallons, by rounded factors: 7.48 gallons a cubic foot, or 0.6 a square foot and inch. */
export const INCH_EXAMPLES: readonly InchExample[] = [
  {
    from: 'rainbarrelsiowa.com, How much rain water can you harvest (read)',
    footprint_ft2: 2500,
    rain_in: 36,
    runoff_share: 0.9,
    gal_ft2_in: 7.48 / 12,
    printed_gal: '50490',
  },
  {
    from: 'Root Simple, Rainfall harvesting math, January 2007 (read)',
    footprint_ft2: 992,
    rain_in: 15.06,
    runoff_share: 0.9,
    gal_ft2_in: 0.6,
    printed_gal: '8067.34',
  },
  {
    from: 'Mother Earth News, on catching rain (read in a copy)',
    footprint_ft2: 2500,
    rain_in: 32,
    runoff_share: 0.8,
    gal_ft2_in: 0.6,
    printed_gal: '38400',
  },
];

/**
 * Not a check: silentstorm.co.uk, on water (read), prints 48,112 litres for two slopes of 11 by 4.55 m, 600 mm and a
 * share of 0.80, which are 48,048, and calls the 100.1 m² 100.
 */
export const WRONG_IN_PRINT = {
  footprint_m2: 2 * 11 * 4.55,
  rain_mm: 600,
  runoff_share: 0.8,
  printed_l: 48_112,
  should_be_l: 48_048,
};

/**
 * Shares of the rain, by Root Simple (above): metal 0.95, pitched asphalt shingle 0.9, tar and gravel 0.8; enHealth
 * (above), naming no roof: 0.80 to 0.85; the Texas manual on rainwater harvesting, 2005, in a report that quotes it:
 * about 10 per cent lost on clay and concrete tiles; a German calculation form with the shares of DIN 1986 and of
 * practice (read): 0.5 for gravelled roofs; Farreny and others 2011, Water Research 45:3245-3254, abstract (read): above
 * 0.90 from smooth slopes.
 */
export const PRINTED_SHARES = {
  metal: [0.9, 0.95],
  tiles: [0.8, 0.85, 0.9],
  shingle: [0.8, 0.85, 0.9],
  'tar-and-gravel': [0.5, 0.8],
} as const;
