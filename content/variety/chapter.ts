import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import type { Page } from '../../src/book/page.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import type { Variety } from '../../src/garden/garden.ts';
import type { VarietySeason } from '../../src/ledger/variety-season.ts';
import { massChart } from './charts.ts';
import { listModel } from './list-model.ts';
import { pathOf } from './paths.ts';
import { posters } from './poster.ts';
import { timesHere } from './ripen-here.ts';
import { roomsHere } from './room-here.ts';
import { ripenTable, varietiesTable } from './tables.ts';
import { figuresOf, trialPages } from './trial-page.ts';
import { estimatesTable, valuesTable } from './trial-tables.ts';
import { varietyModel } from './variety-model.ts';

/** Which variety? One page for all, with the room they take and whether they ripen here, and one for each. */
export const variety: QuestionChapter = {
  kind: 'question',
  id: 'variety',
  write: (facts) => [
    listPage(facts),
    ...trialPages(facts),
    ...facts.garden.varieties.map((one) => varietyPage(facts, one)),
    ...posters(facts),
  ],
};

const FRAME = { chapter: 'variety', finding: 'variety/finding.njk', cautions: [] };

function listPage(facts: Facts): Page {
  const seasons = [...facts.ledger.varieties.values()].flat();
  const [times, rooms] = [timesHere(facts), roomsHere(facts)];
  const { trials } = facts.ledger;
  const tables = [varietiesTable(facts), ripenTable(times), estimatesTable(trials), valuesTable(trials)];
  return {
    ...FRAME,
    path: 'variety/',
    template: 'variety/index.njk',
    title: 'Which variety?',
    level: levelOf(seasons),
    model: listModel(facts, times, rooms),
    charts: [],
    tables: tables.filter(({ rows }) => rows.length > 0),
    figures: [
      ...times.flatMap(({ days, varieties }) => [days, ...varieties.flatMap(({ needs, spare }) => [needs, spare])]),
      ...rooms.map(({ each }) => each),
      ...trials.flatMap(figuresOf),
    ],
    listed: true,
  };
}

function varietyPage(facts: Facts, one: Variety): Page {
  const seasons = facts.ledger.varieties.get(one.id) ?? [];
  const chart = massChart(facts, one, seasons);
  return {
    ...FRAME,
    path: pathOf(one),
    template: 'variety/variety.njk',
    title: one.name,
    finding: 'variety/variety-finding.njk',
    level: levelOf(seasons),
    model: varietyModel(facts, one, seasons, chart?.id ?? null),
    charts: chart ? [chart] : [],
    tables: [],
    figures: seasons.flatMap(({ heaviest, least_sugar, most_sugar, first_pick_days }) => [
      heaviest,
      least_sugar,
      most_sugar,
      first_pick_days,
    ]),
    listed: false,
  };
}

/** Planted and picked, then each fruit weighed, then cut and metered as well. */
const levelOf = (seasons: readonly VarietySeason[]): RecordLevel =>
  recordLevel('little', {
    little: seasons.some(({ totals }) => totals.measures.fruits.total.value !== null),
    some: seasons.some(({ heaviest }) => heaviest.value !== null),
    full: seasons.some(({ most_sugar }) => most_sugar.value !== null),
  });
