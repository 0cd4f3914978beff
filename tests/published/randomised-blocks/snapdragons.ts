/**
 * Snapdragon stems on 7 soils in 3 complete blocks: Stenstrom 1940, the worked example of the randomised complete
 * block design in the manual of SAS PROC GLM. Data and printed values written from memory; R 4.2.2 gives every
 * printed digit from these data.
 */
export const SNAPDRAGONS = {
  /** Blocks 1, 2, 3 of each soil. */
  soils: {
    Clarion: [32.7, 32.3, 31.5],
    Clinton: [32.1, 29.7, 29.1],
    Knox: [35.7, 35.9, 33.1],
    ONeill: [36.0, 34.2, 31.2],
    Compost: [31.8, 28.0, 29.2],
    Wabash: [38.2, 37.8, 31.9],
    Webster: [32.5, 31.1, 29.7],
  },
  printed: {
    block: { df: 2, f: '11.86', p: '0.0014' },
    treatment: { df: 6, f: '10.45', p: '0.0004' },
    residual: { df: 12, ms: '1.645238' },
  },
};
