/**
 * Soil temperature for vegetable seed in °F: least, best from and to, most. J.F. Harrington, as published by Oregon
 * State University Extension, Soil temperature conditions for vegetable seed germination, 2013, reviewed 2024
 * (extension.oregonstate.edu; read in part). Its pumpkin row has the best up to 90.
 */
export const SOIL_F: Readonly<Record<string, readonly [number, number, number, number]>> = {
  Cucumber: [60, 60, 95, 105],
  Muskmelon: [60, 75, 95, 100],
  Squash: [60, 70, 95, 100],
  Tomato: [50, 60, 85, 95],
  Watermelon: [60, 70, 95, 105],
};

/** Days to the seedling at 68, 77, 86 and 95 °F: the row of squash, which the Knott's copy lacks; victoryseeds.com/pages/germination-temps (read). */
export const SQUASH_DAYS = [15, 6, 4, 3];
