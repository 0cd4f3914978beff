/**
 * Worked examples of R.G. Allen, L.S. Pereira, D. Raes & M. Smith, Crop evapotranspiration, FAO Irrigation and Drainage
 * Paper 56, Rome 1998, chapters 3 and 4 (www.fao.org/4/x0490e/x0490e07.htm and x0490e08.htm; read). `printed` has the
 * digits of the paper; `exact` is the same chain of equations without its rounded steps, computed with R 4.2.2.
 */

/** South negative, degrees; the day as it is named and its number in the year. */
interface RadiationExample {
  readonly example: string;
  readonly degrees: number;
  readonly minutes: number;
  readonly south: boolean;
  /** In a year without a leap day; null where the example takes the middle of a month and names its number alone. */
  readonly date: string;
  readonly day_of_year: number;
  readonly ra: { readonly printed: string; readonly exact: number };
  readonly daylight: { readonly printed: string; readonly exact: number } | null;
}

export const RADIATION: readonly RadiationExample[] = [
  {
    example: '8 and 9, 20° S on 3 September',
    degrees: 20,
    minutes: 0,
    south: true,
    date: '1997-09-03',
    day_of_year: 246,
    ra: { printed: '32.2', exact: 32.193996 },
    daylight: { printed: '11.7', exact: 11.665592 },
  },
  {
    example: '10, 22°54′ S in May',
    degrees: 22,
    minutes: 54,
    south: true,
    date: '1997-05-15',
    day_of_year: 135,
    ra: { printed: '25.1', exact: 25.11103 },
    daylight: { printed: '10.9', exact: 10.89508 },
  },
  {
    example: '15, 45°43′ N in July',
    degrees: 45,
    minutes: 43,
    south: false,
    date: '1997-07-15',
    day_of_year: 196,
    ra: { printed: '40.6', exact: 40.554773 },
    daylight: null,
  },
  {
    example: '16, 13°44′ N in April',
    degrees: 13,
    minutes: 44,
    south: false,
    date: '1997-04-15',
    day_of_year: 105,
    ra: { printed: '38.1', exact: 38.057686 },
    daylight: null,
  },
];

/** Example 7: degrees and minutes as degrees, and as radians with the sign of the hemisphere. */
export const LATITUDES = [
  { degrees: 13, minutes: 44, south: false, decimal: '13.73', radians: '0.240' },
  { degrees: 22, minutes: 54, south: true, decimal: '-22.90', radians: '-0.400' },
];

/** Example 8, the same energy as water, mm a day. */
export const RA_AS_WATER = '13.1';

/** Example 18, 50°48′ N on 6 July: Ra 41.09 MJ a m² a day, N 16.1 hours. Example 17, 13°44′ N in April: N 12.31. */
export const MORE_PRINTED = [
  { latitude_deg: 50.8, day_of_year: 187, ra: '41.09', daylight: '16.1' },
  { latitude_deg: 13.733, day_of_year: 105, ra: '38.06', daylight: '12.31' },
];

/** Example 20, by Eq. 52: 45°43′ N in July (the Ra of example 15), highest and lowest 26.6 and 14.8 °C. */
export const HARGREAVES = { day: { tmax: 26.6, tmin: 14.8 }, printed: '5.0', exact: 5.033055 };
