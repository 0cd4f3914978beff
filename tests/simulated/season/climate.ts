/** The weather a garden can expect, in °C and mm. */
export interface Climate {
  /** Mean of the year, half the way from the coldest to the warmest day, and the warmest day of the year. */
  readonly mean_c: number;
  readonly swing_c: number;
  readonly warmest_day: number;
  /** Standard deviations of whole years and of days about the curve; a day keeps this share of the day before's. */
  readonly year_sd_c: number;
  readonly day_sd_c: number;
  readonly persistence: number;
  /** Half the way from the lowest to the highest temperature of a dry and a wet day, and its standard deviation. */
  readonly half_range_c: { readonly dry: number; readonly wet: number; readonly sd: number };
  readonly wet_after_dry: number;
  readonly wet_after_wet: number;
  /** Rain of a wet day: a gamma number. */
  readonly rain: { readonly shape: number; readonly mean_mm: number };
}

/** The share of days that are wet in the long run. */
export const wetShare = ({ wet_after_dry, wet_after_wet }: Climate): number =>
  wet_after_dry / (1 + wet_after_dry - wet_after_wet);

/** The temperature of an average day of the year (1 to 366), °C. */
export const usualC = ({ mean_c, swing_c, warmest_day }: Climate, dayOfYear: number): number =>
  mean_c + swing_c * Math.cos((2 * Math.PI * (dayOfYear - warmest_day)) / 365);
