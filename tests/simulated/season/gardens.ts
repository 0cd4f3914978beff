import { type SeasonGarden, seasonGarden } from './garden.ts';
import type { SeasonSetting } from './setting.ts';

/** The gardens of seeds 1 to a count. */
export const gardensOf = (setting: SeasonSetting, count: number): SeasonGarden[] =>
  Array.from({ length: count }, (_, index) => seasonGarden(setting, index + 1));

/** A setting in which nothing ends a fruit but being picked when called ripe, or the season. */
export const unharmed = (setting: SeasonSetting): SeasonSetting => ({
  ...setting,
  bearing: { ...setting.bearing, aborted: 0 },
  storm: { ...setting.storm, from_mm: Number.POSITIVE_INFINITY },
  losses: { ...setting.losses, per_day: 1e-9, rot_days: 1e9 },
  keeping: { ...setting.keeping, thinned: 0 },
});

/** The same, and nobody picks before the season closes: each fruit is looked over on every walk. */
export function watched(setting: SeasonSetting): SeasonSetting {
  const { keeping } = setting;
  const forecast = { ...keeping.walking.forecast, heed: 0 };
  const walking = { ...keeping.walking, forecast };
  return {
    ...unharmed(setting),
    keeping: { ...keeping, walking, thinned: 0, by_lot: 0, picked_when_ripe: 0, looked: 1 },
  };
}
