/**
 * Worked examples of R.G. Allen, L.S. Pereira, D. Raes & M. Smith, Crop evapotranspiration, FAO Irrigation and Drainage
 * Paper 56, Rome 1998, chapters 3 and 4 (www.fao.org/4/x0490e/x0490e07.htm and x0490e08.htm; read). `printed` has the
 * digits of the paper; `exact` is the same chain of equations without its rounded steps, computed with R 4.2.2.
 * Where the paper carries on with a digit it did not print, its last values alone are taken; said beside each.
 */

export interface Value {
  readonly printed: string;
  readonly exact: number;
}

const value = (printed: string, exact: number): Value => ({ printed, exact });

/** Example 2, 1800 m: P kPa and γ kPa a °C. */
export const AT_1800_M = {
  elevation_m: 1800,
  pressure: value('81.8', 81.75579640764421),
  psychrometric: value('0.054', 0.0543676046110834),
};

/** Example 3: e° at both extremes, their mean, and e° at the mean temperature, kPa. */
export const SATURATION = {
  air: { tmax_c: 24.5, tmin_c: 15 },
  at_tmax: value('3.075', 3.07464905088159),
  at_tmin: value('1.705', 1.7053462321157722),
  mean: value('2.39', 2.389997641498681),
  at_mean: value('2.30', 2.302338628043423),
};

/** Example 4, a blown psychrometer at 1200 m: P, e° at the wet bulb and ea, kPa. */
export const WET_BULB = {
  elevation_m: 1200,
  dry_c: 25.6,
  wet_c: 19.5,
  pressure: value('87.9', 87.89663392119601),
  at_wet: value('2.267', 2.2668801009804516),
  vapour: value('1.91', 1.9119359138798777),
};

/** Examples 5 and 6: ea by both humidities and by their mean (Eq. 19), and es - ea, kPa. */
export const HUMIDITY = {
  air: { tmax_c: 25, tmin_c: 18 },
  humidity: { rh_max_pct: 82, rh_min_pct: 54 },
  at_tmin: value('2.064', 2.063989202660485),
  at_tmax: value('3.168', 3.1677777175068473),
  vapour: value('1.70', 1.7015355568176478),
  vapour_by_mean: value('1.78', 1.7788007528568932),
  deficit: value('0.91', 0.9143479032660187),
};

/**
 * Examples 10, 11 and 12, 22°54′ S in May at the sea: Rs, Rs/Rso, Rnl, Rns and Rn, MJ a m² a day, and as mm. The heading of
 * Example 11 prints the latitude as -22.70; -22.90 is what its numbers come from. It prints 38.8 and 35.8 and goes on with 38.7
 * and 35.7, and Example 12 prints 7.6 and goes on with 7.7 for its mm: so no steps between, and 3.1 mm is 0.408 of 7.6227.
 */
export const RIO = {
  latitude_deg: -(22 + 54 / 60),
  day_of_year: 135,
  sun_h: 220 / 31,
  air: { tmax_c: 25.1, tmin_c: 19.1 },
  vapour_kpa: 2.1,
  solar: value('14.5', 14.456098248473293),
  solar_mm: '5.9',
  share_of_clear: value('0.77', 0.7675829856188673),
  longwave: value('3.5', 3.508540861149128),
  longwave_mm: '1.4',
  shortwave: value('11.1', 11.131195651324436),
  net: value('7.6', 7.622654790175308),
  net_mm: '3.1',
};

/** Example 13, March to May: G of April, MJ a m² a day, and as mm. */
export const SOIL_HEAT = { before_c: 14.1, after_c: 18.8, heat: value('0.33', 0.329), heat_mm: '0.13' };

/** Example 14: 3.2 m/s at 10 m. */
export const WIND = {
  wind_m_s: 3.2,
  height_m: 10,
  factor: value('0.75', 0.7479510751679441),
  at_2_m: value('2.4', 2.393443440537421),
};

/** Example 15, 45°43′ N inland in July: Rs by the swing of temperature, MJ a m² a day, and as mm. */
export const LYON_SOLAR = {
  latitude_deg: 45 + 43 / 60,
  elevation_m: 200,
  day_of_year: 196,
  air: { tmax_c: 26.6, tmin_c: 14.8 },
  solar: value('22.3', 22.28963505458109),
  solar_mm: '9.1',
};

/**
 * Example 16, 13°44′ N on a coast in April, no radiation read. The clear sky is 0.75 Ra (Eq. 36). The paper subtracts 2.9 where
 * it printed 3.0; the unrounded Rn rounds to its 13.9 all the same.
 */
export const BANGKOK_SWING = {
  latitude_deg: 13 + 44 / 60,
  day_of_year: 105,
  air: { tmax_c: 34.8, tmin_c: 25.6 },
  vapour_kpa: 2.85,
  solar: value('21.9', 21.932588501015676),
  clear: value('28.5', 28.54326431959483),
  shortwave: value('16.9', 16.888093145782072),
  longwave: value('3.0', 2.9624081543701632),
  net: value('13.9', 13.92568499141191),
  net_mm: '5.7',
};

/**
 * Example 17, the same place, a month: G by Eq. 44 from March at 29.2 to April at 30.2 °C. The clear sky is that of Eq. 37.
 * The paper's γ is that of 101.3 kPa; unrounded the pressure is 101.276 and γ 0.06735, a digit less.
 */
export const BANGKOK_MONTH = {
  latitude_deg: 13 + 44 / 60,
  elevation_m: 2,
  day_of_year: 105,
  air: { tmax_c: 34.8, tmin_c: 25.6 },
  vapour_kpa: 2.85,
  wind_m_s: 2,
  sun_h: 8.5,
  before_c: 29.2,
  month_c: 30.2,
  slope: '0.246',
  pressure: '101.3',
  psychrometric: '0.0674',
  saturation: '4.42',
  deficit: '1.57',
  solar: value('22.65', 22.651004629852267),
  clear: value('28.54', 28.54478662702521),
  shortwave: '17.44',
  longwave: value('3.11', 3.1086091339710924),
  net: value('14.33', 14.332664431015154),
  soil_heat: '0.14',
  eto: value('5.72', 5.716124607813229),
};

/** Example 18, 50°48′ N at 100 m, 6 July; wind 10 km/h at 10 m. */
export const UCCLE_DAY = {
  latitude_deg: 50 + 48 / 60,
  elevation_m: 100,
  day_of_year: 187,
  air: { tmax_c: 21.5, tmin_c: 12.3 },
  humidity: { rh_max_pct: 84, rh_min_pct: 63 },
  wind_m_s: 10 / 3.6,
  wind_height_m: 10,
  sun_h: 9.25,
  pressure: '100.1',
  slope: '0.122',
  psychrometric: '0.0666',
  wind_at_2_m: value('2.078', 2.077641875466511),
  saturation: value('1.997', 1.9974855625338357),
  vapour: value('1.409', 1.4086238018595982),
  deficit: '0.589',
  solar: value('22.07', 22.07205161436855),
  clear: value('30.90', 30.898458423783794),
  shortwave: '17.00',
  longwave: value('3.71', 3.7122945704314456),
  net: value('13.28', 13.28318517263234),
  eto: value('3.88', 3.8802594471140064),
};

/** Example 20, the place of Example 15 with its temperatures alone: damp by Tmin, sun by the swing, wind as given. */
export const LYON_WITHOUT = {
  latitude_deg: 45 + 43 / 60,
  elevation_m: 200,
  day_of_year: 196,
  air: { tmax_c: 26.6, tmin_c: 14.8 },
  vapour: value('1.68', 1.6835115280330897),
  saturation: value('2.58', 2.5830172097445447),
  clear: value('30.58', 30.578298612636896),
  longwave: value('3.68', 3.679793814935116),
  net: value('13.48', 13.483225177092322),
  eto: value('4.56', 4.560439265321506),
  eto_at_wind: [
    { wind_m_s: 1, eto: value('4.2', 4.227712108650771) },
    { wind_m_s: 3, eto: value('4.8', 4.840599800393706) },
  ],
  hargreaves: value('5.0', 5.033055319412047),
};
