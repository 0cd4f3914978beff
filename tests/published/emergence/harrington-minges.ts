/**
 * Days from sowing to the seedling, seed planted half an inch deep, by soil temperature in °F; null where it was not
 * tested or nothing came up. J.F. Harrington & P.A. Minges, Vegetable Seed Germination, California Agricultural
 * Extension mimeo leaflet, 1954, as printed in Knott's Handbook for Vegetable Growers; read in a teaching manual of
 * organic growing (appendix 4 of its unit on propagation) and, with the same numbers, at
 * victoryseeds.com/pages/germination-temps.
 */
export const SOIL_F = [32, 41, 50, 59, 68, 77, 86, 95, 104];

export const DAYS: Readonly<Record<string, readonly (number | null)[]>> = {
  asparagus: [null, null, 53, 24, 15, 10, 12, 20, 28],
  'bean, snap': [null, null, null, 16, 11, 8, 6, 6, null],
  carrot: [null, 51, 17, 10, 7, 6, 6, 9, null],
  'corn, sweet': [null, null, 22, 12, 7, 4, 4, 3, null],
  cucumber: [null, null, null, 13, 6, 4, 3, 3, null],
  lettuce: [49, 15, 7, 4, 3, 2, 3, null, null],
  muskmelon: [null, null, null, null, 8, 4, 3, null, null],
  okra: [null, null, null, 27, 17, 13, 7, 6, 7],
  onion: [136, 31, 13, 7, 5, 4, 4, 13, null],
  pea: [null, 36, 14, 9, 8, 6, 6, null, null],
  pepper: [null, null, null, 25, 13, 8, 8, 9, null],
  radish: [null, 29, 11, 6, 4, 4, 3, null, null],
  tomato: [null, null, 43, 14, 8, 6, 6, 9, null],
  watermelon: [null, null, null, null, 12, 5, 4, 3, null],
};
