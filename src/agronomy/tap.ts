/**
 * A tap left running. The flow is measured by filling something of known size and taken as constant. It is not: with
 * less water above the tap it slows down, so a time to empty is the soonest it can happen, if the flow was measured at
 * this level or a higher one. An upright tank with an open tap takes twice as long by Torricelli’s law, which is no help
 * to whoever comes back late. Every function throws RangeError for a flow, a time or an amount that is none.
 */

/** Litres a minute, from a can or bucket filled in so many seconds. */
export function measuredFlow({ volume_l, seconds }: { readonly volume_l: number; readonly seconds: number }): number {
  check('volume_l', volume_l, volume_l > 0);
  check('seconds', seconds, seconds > 0);
  return (volume_l * 60) / seconds;
}

export interface OpenTap {
  /** Litres in the tank now. */
  readonly level_l: number;
  /** Litres below the tap, which stay in the tank. */
  readonly dead_l: number;
  readonly flow_l_min: number;
}

/** Hours until no more comes out, at the soonest; 0 where the water stands below the tap already. */
export function hoursToEmpty({ level_l, dead_l, flow_l_min }: OpenTap): number {
  check('level_l', level_l, level_l >= 0);
  check('dead_l', dead_l, dead_l >= 0);
  return minutesFor({ amount_l: Math.max(0, level_l - dead_l), flow_l_min }) / 60;
}

/**
 * Minutes a tap may run so that no more than an amount comes out: the time to set a timer to. Holds if the flow was
 * measured at this level or a higher one; from a flow measured low, a full tank gives more.
 */
export function minutesFor({
  amount_l,
  flow_l_min,
}: {
  readonly amount_l: number;
  readonly flow_l_min: number;
}): number {
  check('amount_l', amount_l, amount_l >= 0);
  check('flow_l_min', flow_l_min, flow_l_min > 0);
  return amount_l / flow_l_min;
}

function check(name: string, value: number, possible: boolean): void {
  if (!possible || !Number.isFinite(value)) throw new RangeError(`invalid ${name}: ${value}`);
}
