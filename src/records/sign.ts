/**
 * The outside signs of ripeness a fruit may show, each with its steps in order and the small code of each step, as a
 * sheet prints it beneath the word. Steps and codes are this handbook's own: no standard for a gardener's eye and ear
 * was found.
 */
export const SIGNS = {
  tendril: { title: 'Tendril at the fruit', codes: { T0: 'green', T1: 'wilting', T2: 'half-brown', T3: 'dry' } },
  ground_spot: {
    title: 'Ground spot',
    codes: { S0: 'none', S1: 'white', S2: 'cream', S3: 'butter', S4: 'deep' },
  },
  sound: { title: 'Sound', codes: { H: 'ringing', L: 'hollow', D: 'dull', X: 'unsure' } },
  rind: { title: 'Rind', codes: { G: 'glossy', M: 'matte' } },
  nail: { title: 'Thumbnail', codes: { N0: 'marks', N1: 'resists' } },
  stalk: { title: 'Stalk', codes: { K0: 'green', K1: 'drying', K2: 'corky' } },
  ground_colour: { title: 'Colour between the net', codes: { C0: 'green', C1: 'turning', C2: 'buff' } },
  smell: { title: 'Smell at the flower end', codes: { A0: 'none', A1: 'faint', A2: 'strong' } },
  slip: { title: 'Slip', codes: { F0: 'none', F1: 'half', F2: 'full' } },
} as const;

/** How a fruit came off its stalk, told at picking: blank where it was cut at once and nobody tried. */
export const PARTED = {
  title: 'How it came off',
  codes: { P0: 'held', P1: 'with-a-tug', P2: 'at-a-lift' },
} as const;

export type SignKey = keyof typeof SIGNS;

/** In the order of looking. */
export const SIGN_KEYS = Object.keys(SIGNS) as readonly SignKey[];
