/**
 * Daily weather of Seattle, 2012 to 2015: US Government work by NOAA's National Climatic Data Center
 * (www.ncdc.noaa.gov/cdo-web/datatools/records), as packed in vega-datasets 3.2.1, data/seattle-weather.csv.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

interface SeattleDay {
  readonly date: string;
  readonly rain_mm: number;
  readonly tmax_c: number;
  readonly tmin_c: number;
}

const HEADER = 'date,precipitation,temp_max,temp_min,wind,weather';

// The package lets nobody name its data files, only its entry, which lies in the folder beside them.
const require = createRequire(import.meta.url);
const text = readFileSync(join(dirname(require.resolve('vega-datasets')), '../data/seattle-weather.csv'), 'utf8');
const [header, ...lines] = text.trim().split(/\r?\n/);
if (header !== HEADER) throw new Error(`other columns than ${HEADER}: ${header}`);

export const SEATTLE: readonly SeattleDay[] = lines.map((line) => {
  const [date = '', rain, tmax, tmin] = line.split(',');
  return { date, rain_mm: Number(rain), tmax_c: Number(tmax), tmin_c: Number(tmin) };
});
