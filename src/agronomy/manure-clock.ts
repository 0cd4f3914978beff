/** The days that raw manure in the ground keeps a fruit from being picked. */
import { addDays, type Day } from '../day.ts';

/** Days from working in to picking. 7 CFR 205.203(c)(1)(ii) and (iii), the rule for organic growers in the USA. */
const LEAST_DAYS = { fruit_on_ground: 120, fruit_above_ground: 90 };

/**
 * The first day on which fruit may safely be picked after raw manure was worked into the soil: "not less than 120 days"
 * later where the fruit lies on the ground, 90 where it hangs clear of soil and splash. Whoever doubts takes 120.
 * For raw manure only, dried included; composted and heat-treated manure has no such wait. Any day.
 */
export function earliestSafePicking(applied: Day, onGround: boolean): Day {
  return addDays(applied, onGround ? LEAST_DAYS.fruit_on_ground : LEAST_DAYS.fruit_above_ground);
}
