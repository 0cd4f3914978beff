import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import type { Page } from '../../src/book/page.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import { allEvents } from '../../src/garden/event.ts';
import type { Season } from '../../src/garden/garden.ts';
import { plantedSeasons } from '../../src/garden/last-planted.ts';
import { diaryChart } from './charts.ts';
import { milestonesOf } from './milestones.ts';
import { diaryRows } from './rows.ts';
import { seasonEntries } from './season-entries.ts';
import { diaryTable } from './tables.ts';

/** What was done when? Everything that is written down of a season, day by day, with the weather beside it. */
export const diary: QuestionChapter = {
  kind: 'question',
  id: 'diary',
  write(facts) {
    const [latest, ...earlier] = plantedSeasons(facts.garden).toReversed();
    if (!latest) return [emptyPage(facts)];
    return [
      {
        ...seasonPage(facts, latest, earlier),
        path: 'diary/',
        title: FRAME.title,
        listed: true,
        earlier: false,
      },
      ...earlier.map((season) => seasonPage(facts, season, [])),
    ];
  },
};

const FRAME = {
  chapter: 'diary',
  template: 'diary/index.njk',
  title: 'What was done when?',
  finding: 'diary/finding.njk',
  figures: [],
  cautions: [],
};

const pathOf = ({ slug }: Season): string => `diary/${slug.toLowerCase()}/`;

const emptyPage = (facts: Facts): Page => ({
  ...FRAME,
  path: 'diary/',
  level: levelOf(facts.garden.seasons),
  model: { season: null, rows: [], earlier: [] },
  charts: [],
  tables: [],
  listed: true,
});

function seasonPage(facts: Facts, season: Season, earlier: readonly Season[]): Page {
  const entries = seasonEntries(facts, season);
  const weather = facts.ledger.weather.get(season.slug) ?? null;
  const rows = diaryRows(entries, weather);
  const chart = diaryChart(facts, season, entries, weather);
  return {
    ...FRAME,
    path: pathOf(season),
    title: `What was done when in ${season.label}?`,
    level: levelOf([season]),
    model: {
      season: season.label,
      chart: chart?.id ?? null,
      milestones: milestonesOf(entries),
      rows,
      weathered: rows.some((row) => row.weather !== null),
      earlier: earlier.map((other) => ({ label: other.label, path: pathOf(other) })),
    },
    charts: chart ? [chart] : [],
    tables: chart ? [] : [diaryTable(season, entries)],
    listed: false,
    earlier: true,
  };
}

/** Planting days, then the days of fruits or work, then the season's diary files as well. */
function levelOf(seasons: readonly Season[]): RecordLevel {
  const plantings = seasons.flatMap((season) => season.plantings);
  const visits = seasons.flatMap((season) => season.visits);
  return recordLevel('little', {
    little: plantings.some(({ planted_on }) => planted_on.kind !== 'unknown'),
    some: plantings.some(({ fruits, pickings }) => fruits.length + pickings.length > 0) || visits.length > 0,
    full: seasons.some(({ events }) => allEvents(events).length > 0),
  });
}
