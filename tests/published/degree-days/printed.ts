/**
 * Degree days of single days, °F, as extension services and climate centres print them: each read in the text named.
 */

interface PrintedDay {
  readonly tmax: number;
  readonly tmin: number;
  readonly base: number;
  readonly printed: string;
  readonly source: string;
}

const AGF_101 = 'Ohio State University Extension AGF-101, 2017, ohioline.osu.edu/factsheet/agf-101 (read)';
const KARHOFF = 'Karhoff, Ohio State University Extension, 2023 (read)';
const ARGUS = 'Waushara Argus, extension column, 2018 (read)';
const AGRON_541 = 'Iowa State University, Agron 541 (read)';
const NUGENT = 'Nugent, Michigan State University (read in a copy at info.5y1.org)';
const WRCC = 'Western Regional Climate Center, summary page (read)';

/** Clipped to base 50 and cap 86. */
export const CLIPPED_86_50: readonly PrintedDay[] = [
  { tmax: 80, tmin: 60, base: 50, printed: '20', source: AGF_101 },
  { tmax: 60, tmin: 40, base: 50, printed: '5', source: AGF_101 },
  { tmax: 90, tmin: 70, base: 50, printed: '28', source: AGF_101 },
  { tmax: 87, tmin: 63, base: 50, printed: '24.5', source: KARHOFF },
  { tmax: 90, tmin: 65, base: 50, printed: '25.5', source: ARGUS },
  { tmax: 72, tmin: 46, base: 50, printed: '11', source: ARGUS },
  { tmax: 63, tmin: 42, base: 50, printed: '6.5', source: ARGUS },
  { tmax: 70, tmin: 50, base: 50, printed: '10', source: AGRON_541 },
];

/** The sum of the three days of the Waushara Argus. */
export const ARGUS_SUM = { source: ARGUS, printed: '43' };

/** The most a day can give under base 50 and cap 86: Iowa State University, Agron 541 (read). */
export const MOST_A_DAY_86_50 = '36';

/** Average, no cap. */
export const AVERAGE: readonly PrintedDay[] = [
  { tmax: 65, tmin: 40, base: 50, printed: '2.5', source: NUGENT },
  { tmax: 60, tmin: 35, base: 50, printed: '0', source: NUGENT },
  { tmax: 95, tmin: 51, base: 60, printed: '13', source: WRCC },
];
