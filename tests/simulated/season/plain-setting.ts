import type { SeasonSetting } from './setting.ts';
import { NO_SLIPS } from './slips.ts';
import type { Traits } from './traits.ts';

const spread = (brix: number, log_mass: number, log_heat: number): Traits => ({ brix, log_mass, log_heat });

/** What settings share unless they say otherwise: all as the usual models suppose, and nothing slips. */
export const PLAIN: Omit<SeasonSetting, 'name' | 'model' | 'seasons'> = {
  earlier_years: 0,
  climate: {
    mean_c: 11,
    swing_c: 10,
    warmest_day: 205,
    year_sd_c: 0.7,
    day_sd_c: 3,
    persistence: 0.7,
    half_range_c: { dry: 6, wet: 4, sd: 1 },
    wet_after_dry: 0.2,
    wet_after_wet: 0.5,
    rain: { shape: 0.7, mean_mm: 8 },
  },
  read: 'evening',
  levels: {
    mean: { brix: 10.5, log_mass: Math.log(4), log_heat: Math.log(380) },
    variety: spread(0.6, 0.25, 0.08),
    season: spread(0.4, 0.1, 0.02),
    variety_by_season: spread(0.3, 0.06, 0.02),
    block: spread(0.2, 0.08, 0),
    mound: spread(0.35, 0.12, 0.02),
    fruit: spread(0.8, 0.2, 0.06),
    fruit_shape: { brix: 'normal', log_mass: 'normal' },
  },
  bearing: {
    sets_per_plant: 3.2,
    first_set_days: { mean: 42, sd: 4 },
    spread_days: 14,
    late_log_mass_per_day: -0.008,
    aborted: 0.25,
  },
  ripening: {
    base_c: 10,
    prime_ratio: { mean: 1.1, sd: 0.01 },
    over_ratio: { mean: 1.3, sd: 0.03 },
    step_log_sd: 0.15,
  },
  sugar: {
    rise_brix: 12,
    green_brix: 6,
    fall_brix: 5,
    day_sd_brix: 0.4,
    dilution_brix_per_mm: 0.03,
    reading_sd_brix: 0.15,
  },
  storm: { from_mm: 20, sd: 1, usual: -1.8, by_log_mass: 1.5, by_ripeness: 5, near: -0.15 },
  losses: { from_days: 18, per_day: 0.003, by_log_mass: 1.5, theft: 0.3, rot_days: 15 },
  signs: { lag_sd: 0.05, stress_sd: 0.04, own_sd: 0.06, look_sd: 0.03 },
  keeping: {
    walking: { weekdays: [3, 6], forecast: { from_mm: 10, accuracy: 0, says: 0.08, heed: 0.4, daring: 0.08 } },
    calling: { observers: 2, bias_sd: 0.03, noise: 0.04, unsure_from: 0.02, ripe_from: 0.08 },
    looked_from_days: 24,
    looked: 0.9,
    picked_when_ripe: 0.9,
    by_lot: 0.15,
    lot_days: { from: 28, to: 48 },
    thinned: 0.06,
    thinned_from_days: 12,
  },
  slips: NO_SLIPS,
  baskets: false,
};
