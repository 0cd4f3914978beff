import type { SignsSetting } from './signs-garden.ts';

const PLAIN = {
  model: 'right',
  seasons: 3,
  cut_per_season: 20,
  shared: 0,
  dry_sd: 0,
  guided: 0,
  unlooked: 0,
  undated: 0,
  eager: 0,
} as const;
const GUIDED = { ...PLAIN, shared: 0.4, guided: 0.5 } as const;
const DROUGHT = { ...GUIDED, dry_sd: 0.7 } as const;

/** Broken: signs mean something else in the season to come, which no cut could have told, and no age holds them up. */
export const SIGNS_SETTINGS: readonly SignsSetting[] = [
  { ...PLAIN, name: 'signs independent, any fruit cut' },
  { ...PLAIN, shared: 0.4, name: 'correlated signs, any fruit cut' },
  { ...GUIDED, name: 'correlated, cut by their signs' },
  { ...DROUGHT, name: 'correlated, by signs, drought dries tendrils' },
  { ...DROUGHT, unlooked: 0.3, undated: 0.3, name: 'the same, 3 in 10 not looked for, not dated' },
  { ...DROUGHT, undated: 1, name: 'the same, no day of set known' },
  { ...DROUGHT, seasons: 2, cut_per_season: 12, name: 'the same as the fourth, 24 fruits of 2 seasons' },
  { ...DROUGHT, model: 'broken', undated: 1, eager: 1, name: 'no day known, another keeper sees signs too readily' },
];
