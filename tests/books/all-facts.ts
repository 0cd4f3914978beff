import { CALENDAR_FACTS } from './facts/calendar.ts';
import { DIARY_FACTS } from './facts/diary.ts';
import { FEED_FACTS } from './facts/feed.ts';
import { FLOWERS_FACTS } from './facts/flowers.ts';
import { GROUND_FACTS } from './facts/ground.ts';
import { MULCH_FACTS } from './facts/mulch.ts';
import { NEXT_FACTS } from './facts/next.ts';
import { PICKING_FACTS } from './facts/picking.ts';
import { RIPE_FACTS } from './facts/ripe.ts';
import { SCOUTING_FACTS } from './facts/scouting.ts';
import { SEED_FACTS } from './facts/seed.ts';
import { SOWING_FACTS } from './facts/sowing.ts';
import { THINNING_FACTS } from './facts/thinning.ts';
import { VARIETY_FACTS } from './facts/variety.ts';
import { WATER_FACTS } from './facts/water.ts';
import { FACTS, type Fact } from './garden-facts.ts';

const CHAPTERS = [
  CALENDAR_FACTS,
  DIARY_FACTS,
  FEED_FACTS,
  FLOWERS_FACTS,
  GROUND_FACTS,
  MULCH_FACTS,
  NEXT_FACTS,
  PICKING_FACTS,
  RIPE_FACTS,
  SCOUTING_FACTS,
  SEED_FACTS,
  SOWING_FACTS,
  THINNING_FACTS,
  VARIETY_FACTS,
  WATER_FACTS,
];

/** Everything the test gardens' pages have to say, by garden. */
export const ALL_FACTS: Readonly<Record<string, readonly Fact[]>> = Object.fromEntries(
  Object.entries(FACTS).map(([garden, facts]) => [
    garden,
    [...facts, ...CHAPTERS.flatMap((chapter) => chapter[garden] ?? [])],
  ]),
);
