import type { Facts } from '../../src/book/chapter.ts';
import type { Dated } from '../../src/dated.ts';
import { type Day, daysBetween } from '../../src/day.ts';
import { because, type Figure, happened } from '../../src/figure.ts';
import type { Season } from '../../src/garden/garden.ts';
import { type Course, coursesOf } from './courses.ts';
import { type FoundLine, foundLines } from './found-lines.ts';
import type { Look } from './look.ts';
import { whereOf } from './where.ts';

/** What a season's looks told. */
export interface SeasonLooks {
  readonly label: string;
  readonly slug: string;
  /** By day. */
  readonly looks: readonly LookRow[];
  /** Different days on which somebody looked. */
  readonly days: Figure;
  /** Weeks from the first planting out in which somebody looked, and weeks there were. */
  readonly weeks: { readonly looked: Figure; readonly grown: Figure };
  /** By the day it was first seen; empty where every look found nothing. */
  readonly found: readonly FoundLine[];
  readonly courses: readonly Course[];
}

export interface LookRow {
  readonly looked_on: Dated;
  /** Null: the whole plot. */
  readonly where: string | null;
  readonly found: Look['found'];
  /** Its keeper's own words for it. */
  readonly what: string | null;
  readonly checked: number | null;
  readonly affected: number | null;
  readonly severity: number | null;
}

/** The last season in which somebody looked; null where nobody ever did. */
export function lastLooks(facts: Facts): SeasonLooks | null {
  const season = facts.garden.seasons.findLast(({ events }) => events.scouting.length > 0);
  return season ? seasonLooks(facts, season) : null;
}

function seasonLooks(facts: Facts, season: Season): SeasonLooks {
  const { bases } = facts.ledger;
  const { slug, label } = season;
  const looks = season.events.scouting;
  const basis = bases.of(looks.map(({ key }) => key));
  const stem = `scouting.${slug}`;
  const count = (id: string, value: number | null, unit: 'days' | 'weeks'): Figure =>
    happened({
      id: `${stem}.${id}`,
      value,
      unit,
      n: looks.length,
      method: 'plain-count',
      basis,
      reason: value === null ? because('planting-day-unknown') : null,
    });
  const weeks = weeksOf(season, facts.today ?? season.ends_on);
  return {
    label,
    slug,
    looks: looks.map((look) => ({
      looked_on: look.looked_on,
      where: whereOf(season, look.spots),
      found: look.found,
      what: look.what,
      checked: look.checked,
      affected: look.affected,
      severity: look.severity,
    })),
    days: count('days_looked', new Set(looks.map(({ looked_on }) => looked_on.text)).size, 'days'),
    weeks: {
      looked: count('weeks_looked', weeks?.looked ?? null, 'weeks'),
      grown: count('weeks_grown', weeks?.grown ?? null, 'weeks'),
    },
    found: foundLines(season),
    courses: coursesOf(season, stem, bases),
  };
}

const WEEK = 7;

/** Counted from the first day of planting out, the last week perhaps not whole; looks of an unknown day are left out. */
function weeksOf(
  { plantings, events, ends_on }: Season,
  today: Day,
): { readonly looked: number; readonly grown: number } | null {
  const first = plantings.reduce<Day | null>(
    (soonest, { planted_on: { first: day } }) => (day && (soonest === null || day < soonest) ? day : soonest),
    null,
  );
  const last = today < ends_on ? today : ends_on;
  if (first === null || first > last) return null;
  const weekOf = (day: Day): number => Math.floor(daysBetween(first, day) / WEEK);
  const looked = events.scouting.flatMap(({ looked_on: { first: from, last: to } }) =>
    from !== null && from === to && from >= first && from <= last ? [weekOf(from)] : [],
  );
  return { looked: new Set(looked).size, grown: weekOf(last) + 1 };
}
