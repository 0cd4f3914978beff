import type { Stages } from './ripening.ts';

/** What moves a fruit's sugar away from that at prime, °Brix. */
export interface Sugar {
  /** Lost for the share of the heat to prime that is still wanting, and the most that is lost so. */
  readonly rise_brix: number;
  readonly green_brix: number;
  /** Lost for the share of the heat to over by which it is past over. */
  readonly fall_brix: number;
  /** Of the effect shared by all fruits of one picking day. */
  readonly day_sd_brix: number;
  /** Lost for a mm of rain in the three days that end on the eve of picking. */
  readonly dilution_brix_per_mm: number;
  /** Of the meter's error, part of no truth. */
  readonly reading_sd_brix: number;
}

/** What ripeness takes away from the sugar at prime: nothing from prime to over, °Brix. */
export function ripenessBrix(
  heat: number,
  stages: Stages<number>,
  { rise_brix, green_brix, fall_brix }: Sugar,
): number {
  if (heat < stages.prime) return -Math.min(green_brix, rise_brix * (1 - heat / stages.prime));
  return heat > stages.over ? -fall_brix * (heat / stages.over - 1) : 0;
}

/** No juice is less sweet than this. */
export const LEAST_BRIX = 1;
