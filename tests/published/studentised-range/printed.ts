/**
 * Upper 5 % and 1 % points of the studentised range, as in Harter 1960, Annals of Mathematical Statistics 31:1122-1147,
 * table 3, and the NIST/SEMATECH e-Handbook. The grid was computed with R 4.2.2 to three decimals, not copied from the
 * printed pages.
 */

/** Degrees of freedom, and the 5 % points for 2, 3, 4 ... values. */
export const Q_95: [number, string[]][] = [
  [5, ['3.635', '4.602', '5.218', '5.673', '6.033', '6.330', '6.582']],
  [10, ['3.151', '3.877', '4.327', '4.654', '4.912', '5.124', '5.304']],
  [12, ['3.081', '3.773', '4.199', '4.508', '4.750', '4.950', '5.119']],
  [15, ['3.014', '3.673', '4.076', '4.367', '4.595', '4.782', '4.940']],
  [20, ['2.950', '3.578', '3.958', '4.232', '4.445', '4.620', '4.768']],
  [24, ['2.919', '3.532', '3.901', '4.166', '4.373', '4.541', '4.684']],
  [30, ['2.888', '3.486', '3.845', '4.102', '4.301', '4.464', '4.601']],
  [60, ['2.829', '3.399', '3.737', '3.977', '4.163', '4.314', '4.441']],
  [120, ['2.800', '3.356', '3.685', '3.917', '4.096', '4.241', '4.363']],
];

/** The 1 % points. */
export const Q_99: [number, string[]][] = [
  [5, ['5.702', '6.976', '7.804', '8.421', '8.913']],
  [10, ['4.482', '5.270', '5.769', '6.136', '6.428']],
  [20, ['4.024', '4.639', '5.018', '5.293', '5.510']],
  [30, ['3.889', '4.455', '4.799', '5.048', '5.242']],
  [60, ['3.762', '4.282', '4.594', '4.818', '4.991']],
];

/**
 * Three groups of unequal size, all pairs at 95 %: results of SAS and MATLAB as kept in scipy 1.17.1,
 * stats/tests/test_hypotests.py, read there.
 */
export const UNEQUAL = {
  groups: {
    1: [24.5, 23.5, 26.28, 26.4, 27.1, 29.9, 30.1, 30.1],
    2: [28.4, 34.2, 29.5, 32.2, 30.1],
    3: [26.1, 28.3, 24.3, 26.2, 27.8],
  },
  /** The second minus the first. */
  printed: [
    { a: '1', b: '2', difference: '3.645', low: '0.267929', high: '7.022071', p: '0.033715' },
    { a: '1', b: '3', difference: '-0.695', low: '-4.072071', high: '2.682071', p: '0.855723' },
    { a: '2', b: '3', difference: '-4.34', low: '-8.086523', high: '-0.593477', p: '0.022590' },
  ],
};

/** The pairs of ../one-way/plant-growth.ts at 95 %, as R's TukeyHSD prints them; from memory, given by R 4.2.2. */
export const PLANT_GROWTH_PAIRS = [
  { a: 'ctrl', b: 'trt1', difference: '-0.371', low: '-1.0622161', high: '0.3202161', p: '0.3908711' },
  { a: 'ctrl', b: 'trt2', difference: '0.494', low: '-0.1972161', high: '1.1852161', p: '0.1979960' },
  { a: 'trt1', b: 'trt2', difference: '0.865', low: '0.1737839', high: '1.5562161', p: '0.0120064' },
];

/** Honestly significant difference at 95 % of the soils in ../randomised-blocks/snapdragons.ts: SAS prints 3.6654. */
export const SNAPDRAGON_HSD = '3.6654';
