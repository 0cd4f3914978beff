/**
 * A tank from day to day, by the rule of yield after spillage: what a day takes is there in the morning, and what the
 * day brings spills over the brim before anything is taken out.
 *
 *   drawn = min(wanted, morning − dead)      end = min(morning + inflow, holds) − drawn
 *
 * Watering is morning work, and nobody can count on rain that has not fallen. Of the two published rules it is the
 * careful one, as it never lets a day drink its own rain; the other, yield before spillage, does.
 * Jenkins and others 1978, as in Fewkes and Butler 2000, Building Services Engineering Research and Technology 21:99-106.
 * A leak, and what dries off an open tank, are not in it.
 */

export interface Tank {
  /** Litres when full. */
  readonly holds_l: number;
  /** Litres below the tap, which cannot be drawn. */
  readonly dead_l: number;
}

export interface TankDay {
  readonly inflow_l: number;
  readonly wanted_l: number;
}

/** inflow = drawn + overflow + (end − start) */
export interface TankStep {
  readonly end_l: number;
  readonly drawn_l: number;
  /** Wanted and not there. */
  readonly short_l: number;
  readonly overflow_l: number;
}

export interface TankRun {
  /** A step a day. */
  readonly steps: readonly TankStep[];
  /** Place of the first day on which something wanted was missing; null when none was. */
  readonly dry_day: number | null;
}

/** Less than this is the arithmetic’s own dust, not water that somebody missed: a thousandth of a millilitre. */
const DUST_L = 1e-6;

/**
 * One day. Throws RangeError for a tank that holds nothing, dead litres beyond what it holds, a start the tank cannot
 * have, or a negative amount.
 */
export function stepTank({ holds_l, dead_l }: Tank, start_l: number, { inflow_l, wanted_l }: TankDay): TankStep {
  check('holds_l', holds_l, holds_l > 0);
  check('dead_l', dead_l, dead_l >= 0 && dead_l <= holds_l);
  check('start_l', start_l, start_l >= 0 && start_l <= holds_l);
  check('inflow_l', inflow_l, inflow_l >= 0);
  check('wanted_l', wanted_l, wanted_l >= 0);
  const drawn_l = Math.min(wanted_l, Math.max(0, start_l - dead_l));
  const missing_l = wanted_l - drawn_l;
  return {
    end_l: Math.min(start_l + inflow_l, holds_l) - drawn_l,
    drawn_l,
    short_l: missing_l < DUST_L ? 0 : missing_l,
    overflow_l: Math.max(0, start_l + inflow_l - holds_l),
  };
}

/** The days in order, each from where the one before it ended. Throws RangeError as `stepTank`. */
export function runTank(tank: Tank, start_l: number, days: readonly TankDay[]): TankRun {
  let level_l = start_l;
  const steps = days.map((day) => {
    const step = stepTank(tank, level_l, day);
    level_l = step.end_l;
    return step;
  });
  const dry_day = steps.findIndex(({ short_l }) => short_l > 0);
  return { steps, dry_day: dry_day === -1 ? null : dry_day };
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
