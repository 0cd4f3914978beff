/**
 * Four sets that a line cannot tell apart: Anscombe 1973, American Statistician 27:17-21. He prints one line for all,
 * 3 + 0.5 x, with the slope's standard error 0.118 and R² 0.667; sets 2 and 3 round to 0.666, so two decimals of it
 * are compared. Data and print from memory; the data are those of R's datasets::anscombe. Longer digits: R 4.2.2, lm.
 */
const X = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];

export const ANSCOMBE = [
  {
    x: X,
    y: [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68],
    r: { intercept: '3.00009091', slope: '0.50009091', slope_se: '0.11790550', r_squared: '0.66654246' },
  },
  {
    x: X,
    y: [9.14, 8.14, 8.74, 8.77, 9.26, 8.1, 6.13, 3.1, 9.13, 7.26, 4.74],
    r: { intercept: '3.00090909', slope: '0.50000000', slope_se: '0.11796375', r_squared: '0.66624203' },
  },
  {
    x: X,
    y: [7.46, 6.77, 12.74, 7.11, 7.81, 8.84, 6.08, 5.39, 8.15, 6.42, 5.73],
    r: { intercept: '3.00245455', slope: '0.49972727', slope_se: '0.11787766', r_squared: '0.66632404' },
  },
  {
    x: [8, 8, 8, 8, 8, 8, 8, 19, 8, 8, 8],
    y: [6.58, 5.76, 7.71, 8.84, 8.47, 7.04, 5.25, 12.5, 5.56, 7.91, 6.89],
    r: { intercept: '3.00172727', slope: '0.49990909', slope_se: '0.11781894', r_squared: '0.66670726' },
  },
];

/** For every set. */
export const PRINTED = { intercept: '3.00', slope: '0.500', slope_se: '0.118', r_squared: '0.67' };
