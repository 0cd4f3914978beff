import { type Chance, wholeBetween } from './chance.ts';

const AUGUST = 31;
const PICKING_DAYS = 50;

/** Different days of August and September 2025, drawn by lot, the first first. Throws RangeError for more than 50. */
export function pickingDays(chance: Chance, count: number): string[] {
  if (count > PICKING_DAYS) throw new RangeError(`invalid count: ${count} picking days`);
  const days = new Set<number>();
  while (days.size < count) days.add(wholeBetween(chance, 1, PICKING_DAYS));
  return [...days].sort((a, b) => a - b).map(written);
}

function written(day: number): string {
  const [month, date] = day <= AUGUST ? ['08', day] : ['09', day - AUGUST];
  return `2025-${month}-${String(date).padStart(2, '0')}`;
}
