/** Sums over the daily weather of Seattle (NOAA). No publisher printed these: computed with R 4.2.2 from the same file. */

/** Shows that the file is still the one the sums below were made from. */
export const WHOLE = {
  days: 1461,
  rain_mm: '4426.0',
  tmax_c: '24017.5',
  tmin_c: '12031.0',
  highest: { tmax_c: 35.6, tmin_c: 18.3, rain_mm: 55.9 },
  lowest: { tmax_c: -1.6, tmin_c: -7.1 },
};

interface SeattleYear {
  readonly year: string;
  readonly days: number;
  readonly rain_mm: string;
  /** May to September, as are the heat sums in °C·d. */
  readonly rain_may_sep_mm: string;
  readonly average_10: string;
  /** Base 10, cap 30. */
  readonly clipped_10_30: string;
  readonly average_15: string;
  /** Days with a highest temperature of 30 °C or more. */
  readonly hot_days: number;
  /**
   * Longest run of days without rain within the year, by R's rle. That of 2012, 23 July to 8 September, is also the
   * 48 days that newspapers reported (from memory).
   */
  readonly dry_spell: { readonly from: string; readonly days: number };
}

export const YEARS: readonly SeattleYear[] = [
  {
    year: '2012',
    days: 366,
    rain_mm: '1226.0',
    rain_may_sep_mm: '154.5',
    average_10: '998.65',
    clipped_10_30: '1026.55',
    average_15: '340.30',
    hot_days: 8,
    dry_spell: { from: '2012-07-23', days: 48 },
  },
  {
    year: '2013',
    days: 365,
    rain_mm: '828.0',
    rain_may_sep_mm: '284.8',
    average_10: '1265.10',
    clipped_10_30: '1269.35',
    average_15: '552.35',
    hot_days: 15,
    dry_spell: { from: '2013-06-28', days: 35 },
  },
  {
    year: '2014',
    days: 365,
    rain_mm: '1232.8',
    rain_may_sep_mm: '221.1',
    average_10: '1262.85',
    clipped_10_30: '1259.00',
    average_15: '535.95',
    hot_days: 17,
    dry_spell: { from: '2014-06-29', days: 23 },
  },
  {
    year: '2015',
    days: 365,
    rain_mm: '1139.2',
    rain_may_sep_mm: '127.4',
    average_10: '1314.70',
    clipped_10_30: '1306.55',
    average_15: '596.50',
    hot_days: 23,
    dry_spell: { from: '2015-06-29', days: 25 },
  },
];
