import type { GardenRecords, Listing } from '../reading/garden-records.ts';
import { listingsOf } from '../reading/garden-records.ts';
import type { Kind } from '../reading/kinds.ts';
import { fileProblem, type Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { SeasonRecord } from '../records/season.ts';
import { checkUnharvested } from './check-unharvested.ts';
import type { Season } from './garden.ts';
import { lastDay } from './last-day.ts';
import type { Lots } from './link-lots.ts';
import type { Places } from './link-places.ts';
import { linkSeason } from './link-season.ts';
import type { Varieties } from './link-varieties.ts';

interface Seasons {
  readonly seasons: readonly Season[];
  readonly problems: readonly Problem[];
}

/** Every season of the garden, by its first day. */
export function linkSeasons(records: GardenRecords, places: Places, varieties: Varieties, lots: Lots): Seasons {
  const slugs = [
    ...new Set(records.listings.filter(({ file }) => file.startsWith('seasons/')).map(({ part }) => part)),
  ].sort();
  const linked = slugs.map((slug) => {
    const of = <K extends Kind>(kind: K): Listing<K>[] => listingsOf(records, kind).filter(({ part }) => part === slug);
    const edges = of('season');
    const season = edges[0]?.entries[0] ?? null;
    const { found, problems } = linkSeason(slug, season?.record ?? null, of, places, varieties, lots);
    return {
      found,
      season,
      plantings: of('plantings').flatMap(({ entries }) => entries),
      problems: [
        ...problems,
        ...(edges.length > 0 ? [] : [seasonMissing(slug)]),
        ...(season ? checkSeason(season, slug) : []),
      ],
    };
  });
  const seasons = linked.flatMap(({ found }) => found ?? []).sort((a, b) => (a.starts_on < b.starts_on ? -1 : 1));
  const entries = linked.flatMap(({ season }) => season ?? []);
  const today = lastDay({ seasons });
  const untold = linked.flatMap(({ found, plantings }) => (found ? checkUnharvested(found, plantings, today) : []));
  return { seasons, problems: [...linked.flatMap(({ problems }) => problems), ...checkOverlap(entries), ...untold] };
}

/** The folder of a season: its label with "/" and blanks written as "-". */
export const seasonSlug = (label: string): string => label.replace(/[^A-Za-z0-9]+/g, '-').replace(/^-|-$/g, '');

function checkSeason(entry: Entry<SeasonRecord>, slug: string): Problem[] {
  const { label, starts_on, ends_on } = entry.record;
  const problems: Problem[] = [];
  if (seasonSlug(label) !== slug) {
    const complaint = {
      code: 'season-folder',
      message: `season "${label}" lies in the folder ${slug}`,
      hint: `call the folder ${seasonSlug(label)}, or correct the label`,
    };
    problems.push(problemIn(entry, ['label'], complaint));
  }
  if (starts_on >= ends_on) {
    problems.push(
      problemIn(entry, ['ends_on'], {
        code: 'season-order',
        message: `the season ends ${ends_on}, before it starts ${starts_on}`,
        hint: 'the two dates may have changed places',
      }),
    );
  }
  return problems;
}

function checkOverlap(entries: readonly Entry<SeasonRecord>[]): Problem[] {
  const sorted = [...entries].sort((a, b) => (a.record.starts_on < b.record.starts_on ? -1 : 1));
  return sorted.flatMap((entry, index) => {
    const before = sorted[index - 1]?.record;
    if (!before || before.ends_on < entry.record.starts_on) return [];
    const message = `season ${entry.record.label} starts before season ${before.label} ends (${before.ends_on})`;
    return [
      problemIn(entry, ['starts_on'], {
        severity: 'warning',
        code: 'season-overlap',
        message,
        hint: 'check the two dates; two crops a year may be 2025A and 2025B',
      }),
    ];
  });
}

const seasonMissing = (slug: string): Problem =>
  fileProblem(`seasons/${slug}/season.yaml`, {
    code: 'season-missing',
    message: `the season in the folder ${slug} has no season.yaml`,
    hint: 'add one with label, starts_on and ends_on',
  });
