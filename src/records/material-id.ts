/** What may be put on the ground or fed: the same ids as in data/reference/materials.yaml. */
export const MATERIALS = [
  'manure-raw',
  'manure-dried',
  'manure-composted',
  'manure-pellets',
  'compost',
  'leaf-mould',
  'green-manure',
  'bone-meal',
  'bought-feed',
  'liquid-feed',
  'wood-ash',
  'lime',
  'other',
] as const;

export type MaterialId = (typeof MATERIALS)[number];

/** Neither composted nor processed: the days to the first safe picking run from it. */
export const RAW_MANURES: readonly MaterialId[] = ['manure-raw', 'manure-dried'];
