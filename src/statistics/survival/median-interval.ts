/** How sure a median time is. */
import { because, type Reason } from '../../figure.ts';
import type { KaplanMeierRow } from './kaplan-meier.ts';

const LEVEL = 0.9;
/** The value a standard normal variable stays below with probability 0.95. Abramowitz & Stegun 1964, table 26.5. */
const NORMAL_95 = 1.6448536269514722;

export interface MedianInterval {
  /** Null when that end cannot be said. */
  readonly low: number | null;
  readonly high: number | null;
  /** Nominal coverage. */
  readonly level: number;
  /** Why an end is null; null when both are known. */
  readonly reason: Reason | null;
}

/**
 * The times at which a 90 % interval of the share still to come holds one half: Brookmeyer & Crowley 1982, Biometrics
 * 38:29-41, with the interval made on the scale log(-log(remaining)), as R's survfit(conf.type = "log-log") does.
 * A row with nothing remaining has no variance and bounds nothing, so few observations often leave `high` open.
 */
export function medianInterval(rows: readonly KaplanMeierRow[]): MedianInterval {
  const bounds = rows.flatMap((row) => {
    if (row.log_variance === null) return [];
    const log = Math.log(row.remaining);
    const reach = (NORMAL_95 * Math.sqrt(row.log_variance)) / log;
    return [{ time: row.time, low: Math.exp(log * Math.exp(-reach)), high: Math.exp(log * Math.exp(reach)) }];
  });
  const low = bounds.find((one) => one.low <= 0.5)?.time ?? null;
  const high = bounds.find((one) => one.high <= 0.5)?.time ?? null;
  const reason = low === null || high === null ? because('median-not-bounded', { rows: bounds.length }) : null;
  return { low, high, level: LEVEL, reason };
}
