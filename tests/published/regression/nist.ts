/**
 * NIST Statistical Reference Datasets, linear regression. https://www.itl.nist.gov/div898/strd/ Norris: data and
 * certified values read from the .dat file as shipped with scipy 1.17.1. NoInt1 and Pontius: both from memory, and R
 * 4.2.2 gives the certified digits from these data.
 */

/** Ozone monitors, a straight line. Lower level of difficulty. */
export const NORRIS = {
  x: [
    0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5,
    11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1,
    448.9, 0.5,
  ],
  y: [
    0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9, 10.8,
    557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2,
    0.2,
  ],
  certified: {
    intercept: { estimate: -0.262323073774029, se: 0.232818234301152 },
    slope: { estimate: 1.00211681802045, se: 0.429796848199937e-3 },
    residual_sd: 0.884796396144373,
    residual_ss: 26.6173985294224,
    regression_ss: 4255954.13232369,
    r_squared: 0.999993745883712,
    f: 5436385.54079785,
  },
};

/** A line through the origin, whose R² is about zero and not about the mean. Average difficulty. */
export const NO_INTERCEPT = {
  x: [60, 61, 62, 63, 64, 65, 66, 67, 68, 69, 70],
  y: [130, 131, 132, 133, 134, 135, 136, 137, 138, 139, 140],
  certified: {
    slope: { estimate: 2.07438016528926, se: 0.165289256198347e-1 },
    residual_sd: 3.56753034006338,
    r_squared: 0.999365492298663,
  },
};

/** Load cells, a parabola; x is 150,000 to 3,000,000 in steps of 150,000, gone through twice. Lower level of difficulty. */
export const PONTIUS = {
  x: Array.from({ length: 40 }, (_, index) => 150_000 * ((index % 20) + 1)),
  y: [
    0.11019, 0.21956, 0.32949, 0.43899, 0.54803, 0.65694, 0.76562, 0.87487, 0.98292, 1.09146, 1.20001, 1.30822, 1.41599,
    1.52399, 1.63194, 1.73947, 1.84646, 1.95392, 2.06128, 2.16844, 0.11052, 0.22018, 0.32939, 0.43886, 0.54798, 0.65739,
    0.76596, 0.87474, 0.983, 1.0915, 1.20004, 1.30818, 1.41613, 1.52408, 1.63159, 1.73965, 1.84696, 1.95445, 2.06177,
    2.16829,
  ],
  certified: {
    coefficients: [0.673565789473684e-3, 0.732059160401003e-6, -0.316081871345029e-14],
    residual_sd: 0.205177424076185e-3,
    r_squared: 0.999999900178537,
  },
};
