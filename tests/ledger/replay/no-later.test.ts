import { describe, expect, test } from 'vitest';
import { loadGarden } from '../../../src/cli/load-garden.ts';
import { addDays, type Day } from '../../../src/day.ts';
import type { Garden, Season } from '../../../src/garden/garden.ts';
import { keptInMemory } from '../../../src/kept.ts';
import { LOOK_DAYS } from '../../../src/ledger/pick-or-wait/lost-share.ts';
import { seasonReplays } from '../../../src/ledger/replay/season-replay.ts';
import { weeksOf } from '../../../src/ledger/replay/weeks.ts';
import { chanceOf, wholeBetween } from '../../simulated/chance.ts';
import { laterChanged } from './later-changes.ts';
import { drawnSeason, drawnWeather, textGarden } from './replay-garden.ts';

const kept = keptInMemory();

/** What was said in the weeks up to one, of every crop. */
function saidUpTo(garden: Garden, season: Season, week: Day) {
  const isBefore = (one: { readonly week: Day }): boolean => one.week <= week;
  return seasonReplays(garden, season, true, kept).map(({ crop, claims, windows, advice }) => ({
    crop,
    claims: claims.filter(isBefore),
    windows: windows.filter(isBefore),
    advice: advice.filter(isBefore),
  }));
}

/**
 * A week's book is used for seven days, and the rain of the two days after its last look stands for the forecast: what
 * is known later than that must change nothing.
 */
function lastSeasonKeeps(garden: Garden, runs: number, from: number) {
  const season = garden.seasons.at(-1);
  if (!season) throw new Error('no season');
  const weeks = weeksOf(season);
  const said = saidUpTo(garden, season, season.ends_on);
  let [kept_claims, kept_windows, changed] = [0, 0, 0];
  for (let run = 0; run < runs; run++) {
    const chance = chanceOf(from + run);
    // From the middle of July to September, when there is something to leak.
    const week = weeks[wholeBetween(chance, 17, 24)];
    if (!week) throw new Error('no week');
    const other = laterChanged(garden, addDays(week.until, LOOK_DAYS), chance);
    const before = saidUpTo(garden, season, week.day);
    expect(saidUpTo(other, season, week.day), `changed after ${week.until}`).toEqual(before);
    kept_claims += before.reduce((sum, { claims }) => sum + claims.length, 0);
    kept_windows += before.reduce((sum, { windows }) => sum + windows.length, 0);
    changed += Number(JSON.stringify(saidUpTo(other, season, season.ends_on)) !== JSON.stringify(said));
  }
  // Else nothing was held against anything, or nothing had been changed.
  expect(kept_claims).toBeGreaterThan(0);
  expect(kept_windows).toBeGreaterThan(0);
  expect(changed).toBeGreaterThan(0);
}

describe('what is known later changes nothing said before', () => {
  test('in a garden of text', () => {
    const garden = textGarden(
      { 2024: drawnSeason(2024, 11), 2025: drawnSeason(2025, 12) },
      { weather: drawnWeather([2023, 2024, 2025], 13) },
    );
    lastSeasonKeeps(garden, 12, 100);
  });

  test('in the last season of the demo', { timeout: 240_000 }, () => {
    const { garden } = loadGarden('data/garden');
    if (!garden) throw new Error('no garden');
    lastSeasonKeeps(garden, 3, 200);
  });

  test('a record written down later than it happened is not known before', () => {
    const rows = drawnSeason(2025, 12);
    const late = (text: string): string => text.replace(/state: unripe\}/g, 'state: unripe, recorded_on: 2025-10-20}');
    const seasons = { 2024: drawnSeason(2024, 11, { fruits: 12 }) };
    const told = (fruits: string) => {
      const garden = textGarden({ ...seasons, 2025: { ...rows, fruits } });
      const season = garden.seasons.at(-1) as Season;
      return seasonReplays(garden, season, false, kept).flatMap(({ claims }) => claims);
    };
    expect(late(rows.fruits)).not.toBe(rows.fruits);
    // With no unripe cut of the season known before its end, fewer are known at each look.
    const [sooner, later] = [told(rows.fruits), told(late(rows.fruits))];
    expect(sooner.length).toBeGreaterThan(later.length);
  });
});
