import { rainRecord } from '../../src/ledger/rain-sugar/rain-windows.ts';
import { type SugarReading, sugarReadings } from '../../src/ledger/rain-sugar/reading.ts';
import { linkTexts } from '../reading/garden-texts.ts';
import { seasonGarden } from '../simulated/season/garden.ts';
import type { SeasonSetting } from '../simulated/season/setting.ts';

const RAIN_DAYS = 3;

/** The fruits a simulated garden's fit is made from, read from its texts, and the true slope in °Brix per mm. */
export interface SimulatedReadings {
  readonly readings: readonly SugarReading[];
  readonly slope: number;
}

/** The readings of a seed's garden. Throws Error when its records hold an error. */
export function simulatedReadings(setting: SeasonSetting, seed: number): SimulatedReadings {
  const { texts, truth } = seasonGarden(setting, seed);
  const { garden, problems } = linkTexts(texts);
  const errors = problems.filter(({ severity }) => severity === 'error');
  const [station] = garden?.stations ?? [];
  if (!garden || !station || errors.length > 0) throw new Error(`invalid garden: ${JSON.stringify(errors[0])}`);
  return {
    readings: sugarReadings(garden, rainRecord(station), RAIN_DAYS).filter(({ forecast }) => !forecast),
    slope: -truth.dilution_brix_per_mm,
  };
}
