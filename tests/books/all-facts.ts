import { CALENDAR_FACTS } from './facts/calendar.ts';
import { DIARY_FACTS } from './facts/diary.ts';
import { PICKING_FACTS } from './facts/picking.ts';
import { SCOUTING_FACTS } from './facts/scouting.ts';
import { SOWING_FACTS } from './facts/sowing.ts';
import { FACTS, type Fact } from './garden-facts.ts';

const CHAPTERS = [CALENDAR_FACTS, DIARY_FACTS, PICKING_FACTS, SCOUTING_FACTS, SOWING_FACTS];

/** Everything the test gardens' pages have to say, by garden. */
export const ALL_FACTS: Readonly<Record<string, readonly Fact[]>> = Object.fromEntries(
  Object.entries(FACTS).map(([garden, facts]) => [
    garden,
    [...facts, ...CHAPTERS.flatMap((chapter) => chapter[garden] ?? [])],
  ]),
);
