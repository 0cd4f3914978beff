import type { Chance } from '../chance.ts';
import { wholeBetween } from '../chance.ts';
import type { Row } from '../yaml-text.ts';
import { dayText } from './calendar.ts';
import { massAt } from './fruit-life.ts';
import type { Grown } from './grown.ts';
import { writtenLate } from './late.ts';
import { type Slips, slips } from './slips.ts';
import { heatBetween, type Year } from './year.ts';

const SEEN_AFTER = { from: 3, to: 14 };
const ABOUT_DAYS = 2;
/** Mass, kg, from which a fruit looks like the next thing. */
const SIZES = { words: ['pea', 'walnut', 'egg', 'fist', 'head'], from_kg: [0.005, 0.03, 0.12, 0.6] };

/** What is written of a fruit's set: the day, about the day, or when it was first seen and how big it was. */
export function setRow({ life, misfortune, ending }: Grown, rates: Slips, year: Year, chance: Chance): Row {
  const missing = slips(rates.set_missing, chance);
  const about = slips(rates.set_about, chance);
  const off = wholeBetween(chance, -ABOUT_DAYS, ABOUT_DAYS);
  const after = wholeBetween(chance, SEEN_AFTER.from, SEEN_AFTER.to);
  const late = writtenLate(life.set, rates, chance);
  if (!missing) return about ? { set_on: `about ${dayText(life.set + off)}` } : { set_on: dayText(life.set), ...late };
  const seen = Math.min(life.set + after, ending.day);
  const grew = Math.min(seen, misfortune?.day ?? seen);
  const kg = massAt(heatBetween(year, life.set, grew), life);
  const size = SIZES.words[SIZES.from_kg.filter((from) => kg >= from).length] ?? '';
  return { first_seen_on: dayText(seen), first_seen_size: size };
}
