import type { Chance } from '../chance.ts';
import { wholeBetween } from '../chance.ts';
import type { Row } from '../yaml-text.ts';
import { dayText } from './calendar.ts';
import { type Slips, slips } from './slips.ts';

const LATEST_DAYS = 6;

/** When a part of a day was written down, for one written late; nothing otherwise. */
export const writtenLate = (day: number, { written_late }: Slips, chance: Chance): Row =>
  slips(written_late, chance) ? { recorded_on: dayText(day + wholeBetween(chance, 1, LATEST_DAYS)) } : {};
