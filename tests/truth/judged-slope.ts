import { loadReference } from '../../src/cli/load-reference.ts';
import type { Interval } from '../../src/figure.ts';
import { linkGarden } from '../../src/garden/link.ts';
import { printedSlope } from '../../src/ledger/rain-sugar/printed-slope.ts';
import { rainRecord } from '../../src/ledger/rain-sugar/rain-windows.ts';
import { sugarReadings } from '../../src/ledger/rain-sugar/reading.ts';
import { readGardenRecords } from '../../src/reading/garden-records.ts';
import { seasonGarden } from '../simulated/season/garden.ts';
import type { SeasonSetting } from '../simulated/season/setting.ts';

/** The printed slope of one simulated garden beside the true one, in °Brix per mm; null where the book gives no number. */
export interface JudgedSlope {
  readonly truth: number;
  readonly interval: Interval | null;
  /** Of the interval. */
  readonly width: number | null;
}

const { crops } = loadReference('data/reference');
const RAIN_DAYS = 3;

/** A garden of a seed, from its texts to the printed slope. Throws Error when its records hold an error. */
export function judgedSlope(setting: SeasonSetting, seed: number): JudgedSlope {
  const { texts, truth } = seasonGarden(setting, seed);
  const files = Object.entries(texts).map(([path, text]) => ({ path, bytes: new TextEncoder().encode(text) }));
  const { garden, problems } = linkGarden(readGardenRecords(files), crops);
  const errors = problems.filter(({ severity }) => severity === 'error');
  const [station] = garden?.stations ?? [];
  if (!garden || !station || errors.length > 0) throw new Error(`invalid garden: ${JSON.stringify(errors[0])}`);
  const readings = sugarReadings(garden, rainRecord(station), RAIN_DAYS).filter(({ forecast }) => !forecast);
  const interval = printedSlope(readings).fit?.interval ?? null;
  return {
    truth: -truth.dilution_brix_per_mm,
    interval,
    width: interval && interval.high - interval.low,
  };
}
