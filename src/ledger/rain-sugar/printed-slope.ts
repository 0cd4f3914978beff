import { because, type Reason } from '../../figure.ts';
import { type Kept, keptOr, NOTHING_KEPT } from '../../kept.ts';
import { evidenceOf, type RainEvidence, tooLittle } from './evidence.ts';
import { type RainSlope, rainSlope } from './rain-slope.ts';
import type { SugarReading } from './reading.ts';

/** Above this half width a slope says nothing of use. */
const WIDEST_HALF_BRIX_PER_10MM = 1;

/** A slope that may be printed, or why none may. */
export interface PrintedSlope {
  /** Of the readings it rests on. */
  readonly evidence: RainEvidence;
  readonly fit: RainSlope | null;
  readonly reason: Reason | null;
}

/** The slope of some readings, where they can tell one; fruits that stand apart are only placed by it. */
export function printedSlope(
  readings: readonly SugarReading[],
  apart: readonly SugarReading[] = [],
  kept: Kept = NOTHING_KEPT,
): PrintedSlope {
  const evidence = evidenceOf(readings);
  const cannot = (reason: Reason): PrintedSlope => ({ evidence, fit: null, reason });
  const little = tooLittle(evidence);
  if (little) return cannot(little);
  const inputs = JSON.stringify(['rain-slope', readings, apart]);
  const found = keptOr(kept, 'fits', inputs, () => rainSlope(readings, apart));
  if ('cannot' in found) return cannot(because('no-rain-fit', { why: found.cannot.code }));
  const half = (10 * (found.interval.high - found.interval.low)) / 2;
  if (half > WIDEST_HALF_BRIX_PER_10MM) return cannot(because('too-wide'));
  return { evidence, fit: found, reason: null };
}

/** The same by another of WINDOWS, from the fruits that have it. */
export function slopeOfWindow(
  readings: readonly SugarReading[],
  index: number,
  kept: Kept = NOTHING_KEPT,
): PrintedSlope {
  const read = readings.flatMap((one) => {
    const rain_mm = one.windows[index] ?? null;
    return rain_mm === null ? [] : [{ ...one, rain_mm }];
  });
  return printedSlope(read, [], kept);
}
