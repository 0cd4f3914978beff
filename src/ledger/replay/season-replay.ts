import { addDays, type Day } from '../../day.ts';
import { cropsOf } from '../../garden/crops-of.ts';
import type { Crop, Garden, Season } from '../../garden/garden.ts';
import { ownStation } from '../../garden/own-station.ts';
import { type Kept, keptOr } from '../../kept.ts';
import { LOOK_DAYS } from '../pick-or-wait/lost-share.ts';
import { cropCuts, cropFit } from '../window/crop-fit.ts';
import { knownGarden } from './known-garden.ts';
import { cardOn, type WeekAdvice, weekAdvice } from './week-advice.ts';
import { type WeekClaim, weekClaims } from './week-claims.ts';
import { type WeekWindow, weekWindows } from './week-windows.ts';
import { type ReplayWeek, weeksOf } from './weeks.ts';

/** Windows are told every other Saturday: those of a fruit a week apart are much alike, and each takes its time. */
export const WINDOW_WEEKS = 2;

/** What the books of a season said of a crop, week by week, and how much they could not say. Plain data. */
export interface SeasonReplay {
  readonly season: string;
  readonly crop: string;
  /** Weeks in which a fruit was looked over or hung. */
  readonly weeks: number;
  /** Fruits looked over, each once a week, and those of them looked at while the cuts were too few to claim anything. */
  readonly looked: number;
  readonly unclaimed: number;
  readonly claims: readonly WeekClaim[];
  /** Fruits on the vine, each once a week; of them those without a day of set. */
  readonly growing: number;
  readonly undated: number;
  /** Why the season has no windows; null where they are told. */
  readonly no_windows: 'few-cuts' | 'not-replayed' | null;
  readonly windows: readonly WeekWindow[];
  readonly advice: readonly WeekAdvice[];
}

/** Every crop of the garden with signs; what was told is kept by all records known a few days after the season. */
export function seasonReplays(garden: Garden, season: Season, with_windows: boolean, kept: Kept): SeasonReplay[] {
  const known = knownGarden(garden, addDays(season.ends_on, LOOK_DAYS));
  const station = ownStation(known);
  const { about, varieties, seasons } = known;
  const inputs = JSON.stringify(['replay', season.slug, with_windows, about, varieties, seasons, station]);
  return keptOr(kept, 'fits', inputs, () => {
    const desk = { bookOn: shelf(known), slug: season.slug, weeks: weeksOf(season), with_windows, kept };
    return cropsOf(varieties)
      .filter(({ signs }) => signs !== null && signs.length > 0)
      .map((crop) => seasonReplay(desk, crop, isGrown(known, season.slug, crop)));
  });
}

/** The garden as known on a day, each day once. */
function shelf(known: Garden): (day: Day) => Garden {
  const books = new Map<Day, Garden>();
  return (day) => {
    const book = books.get(day) ?? knownGarden(known, day);
    books.set(day, book);
    return book;
  };
}

interface Desk {
  readonly bookOn: (day: Day) => Garden;
  readonly slug: string;
  readonly weeks: readonly ReplayWeek[];
  readonly with_windows: boolean;
  readonly kept: Kept;
}

const isGrown = ({ seasons }: Garden, slug: string, crop: Crop): boolean =>
  seasons.some(
    (season) =>
      season.slug === slug &&
      season.plantings.some(({ variety, fruits }) => variety?.crop.id === crop.id && fruits.length > 0),
  );

function seasonReplay(desk: Desk, crop: Crop, is_grown: boolean): SeasonReplay {
  const { slug, with_windows } = desk;
  const told = is_grown ? weeksTold(desk, crop) : [];
  const sum = (of: (week: WeekTold) => number): number => told.reduce((all, week) => all + of(week), 0);
  const growing = sum(({ windows }) => windows.growing);
  return {
    season: slug,
    crop: crop.id,
    weeks: told.filter(({ claims, windows }) => claims.looked > 0 || windows.growing > 0).length,
    looked: sum(({ claims }) => claims.looked),
    unclaimed: sum(({ claims }) => (claims.claims === null ? claims.looked : 0)),
    claims: told.flatMap(({ claims }) => claims.claims ?? []),
    growing,
    undated: sum(({ windows }) => windows.undated),
    no_windows: with_windows ? (told.some(({ learned }) => learned) ? null : 'few-cuts') : 'not-replayed',
    windows: told.flatMap(({ windows }) => windows.windows),
    advice: told.flatMap(({ advice }) => advice),
  };
}

interface WeekTold {
  readonly claims: ReturnType<typeof weekClaims>;
  readonly windows: ReturnType<typeof weekWindows>;
  readonly advice: readonly WeekAdvice[];
  readonly learned: boolean;
}

/**
 * Signs are put together anew every week. The windows' states take a second and more to learn, and so does the slope of
 * the rain card: both are those of the season's first book, as if nobody had printed them again.
 */
function weeksTold({ bookOn, slug, weeks, with_windows, kept }: Desk, crop: Crop): WeekTold[] {
  const first = weeks[0];
  if (!first) return [];
  const opened = bookOn(first.day);
  const cuts = cropCuts(opened, crop, first.day);
  const learned = with_windows && cuts.cannot === null ? cropFit(cuts, kept) : null;
  let card: ReturnType<typeof cardOn> | undefined;
  return weeks.map((week, at) => {
    const book = bookOn(week.day);
    const claims = weekClaims(book, bookOn(week.until), crop, slug, week, kept);
    if (claims.claims && claims.claims.length > 0) card ??= cardOn(opened, crop, first.day, kept);
    return {
      claims,
      windows: weekWindows(book, crop, slug, week, at % WINDOW_WEEKS === 0 ? learned : null),
      advice: card && claims.claims ? weekAdvice(bookOn(addDays(week.until, LOOK_DAYS)), claims.claims, card) : [],
      learned: learned !== null,
    };
  });
}
