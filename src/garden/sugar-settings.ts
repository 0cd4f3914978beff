import type { GardenRecord } from '../records/garden.ts';

/** How rain is held against sugar. */
export interface SugarSettings {
  /** Days of rain that count, the last of them the day before picking. */
  readonly rain_days: number;
  /** What a tongue can tell, in °Brix. */
  readonly tongue_brix: number;
}

/** House choices, changeable in garden.yaml; a judgement, no source. */
export const sugarSettingsOf = ({ sugar }: Pick<GardenRecord, 'sugar'>): SugarSettings => ({
  rain_days: sugar?.rain_days ?? 3,
  tongue_brix: sugar?.tongue_brix ?? 1,
});
