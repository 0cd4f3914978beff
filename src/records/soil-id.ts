/** Textures a grower may name. */
export const SOILS = [
  'sand',
  'loamy-sand',
  'sandy-loam',
  'loam',
  'silt-loam',
  'silt',
  'clay-loam',
  'silty-clay-loam',
  'silty-clay',
  'clay',
  'potting-mix',
  'unknown',
] as const;
