import type { GardenRecord } from '../records/garden.ts';

/** What the book counts as hot, cool, wet, soaking and dry, in SI. */
export interface Thresholds {
  /** A day whose highest temperature reaches this is hot. */
  readonly hot_day_c: number;
  /** A night whose lowest temperature stays under this is cool. */
  readonly cool_night_c: number;
  /** A day with at least this much rain is wet. */
  readonly wet_day_mm: number;
  readonly soaking_day_mm: number;
  /** So many days in a row without a wet one make a dry spell. */
  readonly dry_spell_days: number;
}

/** How the book adds up heat. */
export interface HeatSettings {
  readonly method: 'average' | 'clipped' | 'sine' | 'triangle';
  readonly base_c: number;
  readonly cap_c: number;
}

/** House choices, each changeable in garden.yaml. Sources do not agree on a base: this one is a convention. */
const THRESHOLDS: Thresholds = {
  hot_day_c: 30,
  cool_night_c: 12,
  wet_day_mm: 1,
  soaking_day_mm: 20,
  dry_spell_days: 7,
};
const HEAT: HeatSettings = { method: 'sine', base_c: 10, cap_c: 32 };

export const thresholdsOf = ({ thresholds }: Pick<GardenRecord, 'thresholds'>): Thresholds => ({
  hot_day_c: thresholds?.hot_day_c ?? THRESHOLDS.hot_day_c,
  cool_night_c: thresholds?.cool_night_c ?? THRESHOLDS.cool_night_c,
  wet_day_mm: thresholds?.wet_day_mm ?? THRESHOLDS.wet_day_mm,
  soaking_day_mm: thresholds?.soaking_day_mm ?? THRESHOLDS.soaking_day_mm,
  dry_spell_days: thresholds?.dry_spell_days ?? THRESHOLDS.dry_spell_days,
});

export const heatSettingsOf = ({ heat_units }: Pick<GardenRecord, 'heat_units'>): HeatSettings => ({
  method: heat_units?.method ?? HEAT.method,
  base_c: heat_units?.base_c ?? HEAT.base_c,
  cap_c: heat_units?.cap_c ?? HEAT.cap_c,
});
