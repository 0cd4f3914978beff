/**
 * Dried weight of plants, control and two treatments: Dobson 1983, An Introduction to Statistical Modelling,
 * table 7.1, as in R's datasets::PlantGrowth. Data and printed values written from memory; R 4.2.2 gives every
 * printed digit from these data.
 */
export const PLANT_GROWTH = {
  groups: {
    ctrl: [4.17, 5.58, 5.18, 6.11, 4.5, 4.61, 5.17, 4.53, 5.33, 5.14],
    trt1: [4.81, 4.17, 4.41, 3.59, 5.87, 3.83, 6.03, 4.89, 4.32, 4.69],
    trt2: [6.31, 5.12, 5.54, 5.5, 5.37, 5.29, 4.92, 6.15, 5.8, 5.26],
  },
  printed: {
    between: { df: 2, ss: '3.76634' },
    within: { df: 27, ss: '10.49209' },
    f: '4.846088',
    p: '0.01590996',
  },
};
