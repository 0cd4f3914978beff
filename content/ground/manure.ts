import type { Facts } from '../../src/book/chapter.ts';
import { materialName } from '../../src/book/material-name.ts';
import type { Season } from '../../src/garden/garden.ts';
import { LEAST_DAYS, type ManureClock, manureClocks } from '../../src/garden/manure-clock.ts';

export interface ClockLine extends ManureClock {
  readonly name: string;
  /** Null where the safe day is not known. */
  readonly passed: boolean | null;
}

export interface ManureModel {
  /** The season whose feeding is told; null before the first. */
  readonly season: string | null;
  readonly lines: readonly ClockLine[];
  readonly days_on_ground: number;
  /** Null where no fruit here hangs clear of the ground. */
  readonly days_above: number | null;
}

/** The wait of every entry of raw manure of the latest season, and the rule. */
export function manureOf({ garden, ledger, reference, today }: Facts, season: Season | null): ManureModel {
  return {
    season: season?.label ?? null,
    lines: season
      ? manureClocks(season.events.feeding, season.plantings).map((clock) => ({
          ...clock,
          name: materialName(reference, clock.material, garden.about.locale),
          passed: clock.earliest === null || today === null ? null : clock.earliest <= today,
        }))
      : [],
    days_on_ground: LEAST_DAYS.fruit_on_ground,
    days_above: ledger.years.some(({ crop }) => !crop.fruit_on_ground) ? LEAST_DAYS.fruit_above_ground : null,
  };
}
