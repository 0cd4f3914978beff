import { record } from '../field/record.ts';
import { measure, sources, span, words } from './trait.ts';

/** Seed of one's own: distance and plants it takes, when it is ripe, how it is cleaned, how long it lives. */
export const seedTraitSchema = record({
  crosses: words('What it crosses with', 160),
  ...span('isolation', '_m', 'Distance to the next of its kind, m', 5000),
  ...span('parents', '', 'Plants to save from', 500),
  past_flowering_days: measure('Days past flowering before its seed is ripe, at least', 200).optional(),
  cleaning: words('How to clean it', 200),
  life_years_low: measure('Years seed lives at home, least', 30).optional(),
  life_years_high: measure('Years seed lives at home, most', 30).optional(),
  /** Least that sold seed must germinate, of a hundred. */
  germination_of_100: measure('Of 100 sold seeds, at least this many come up', 100).optional(),
  sources,
});
