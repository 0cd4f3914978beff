/**
 * Heights of crossed less self-fertilised maize in 15 pots, eighths of an inch: Darwin 1876, as in Fisher 1935, The
 * Design of Experiments, sections 16 to 21. Data and Fisher's counts from memory; R 4.2.2 gives both from these data.
 */
export const MAIZE = {
  differences: [49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48],
  sum: 314,
  /** Of 32,768 choices of sign, those with a sum of 314 or more. */
  arrangements: 32_768,
  at_least: 863,
  /** The sign test: 13 of 15 above. p computed by R 4.2.2, binom.test: 242 / 32,768. */
  above: 13,
  sign_p: '0.007385',
  /** R 4.2.2, binom.test(13, 15, conf.level = 0.9). */
  share_90: [0.6365582344586, 0.97577426753146] as const,
};
