import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import type { Page } from '../../src/book/page.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import type { Figure } from '../../src/figure.ts';
import { MEASURES } from '../../src/ledger/measure.ts';
import type { SeasonYield } from '../../src/ledger/season-yield.ts';
import type { Totals } from '../../src/ledger/totals.ts';
import { seasonModel } from './season-model.ts';
import { analysisTable, differencesTable, seasonsTable, spotsTable, varietiesTable } from './tables.ts';

/** What did we get? Fruits and mass, all and sound, by garden, variety and spot. */
export const yieldChapter: QuestionChapter = {
  kind: 'question',
  id: 'yield',
  write(facts) {
    const told = facts.ledger.yields.filter(hasHarvest).reverse();
    const waiting = facts.ledger.yields.filter((season) => !told.includes(season)).map(({ season }) => season.label);
    const [latest, ...earlier] = told;
    if (!latest)
      return [
        {
          ...FRAME,
          path: 'yield/',
          level: recordLevel('little', { little: false, some: false, full: false }),
          model: { season: null, waiting },
          charts: [],
          tables: [],
          figures: [],
          listed: true,
        },
      ];
    const first = seasonPage(facts, latest, told, waiting);
    return [
      {
        ...first,
        path: 'yield/',
        tables: [...first.tables, seasonsTable([...told].reverse())],
        // What is lifted is this season's; an earlier one is only read about.
        cautions: ['lifting'],
        listed: true,
        earlier: false,
      },
      ...earlier.map((season) => seasonPage(facts, season, [], [])),
    ];
  },
};

const FRAME = {
  chapter: 'yield',
  template: 'yield/index.njk',
  title: 'What did we get?',
  finding: 'yield/finding.njk',
  cautions: [],
};

const hasHarvest = ({ garden }: SeasonYield): boolean => garden.measures.fruits.total.value !== null;

function seasonPage(facts: Facts, season: SeasonYield, all: readonly SeasonYield[], waiting: readonly string[]): Page {
  const model = seasonModel(facts, season, all, waiting);
  const title = all.length > 0 ? FRAME.title : `What did we get in ${season.season.label}?`;
  return {
    ...FRAME,
    path: `yield/${season.season.slug.toLowerCase()}/`,
    title,
    level: levelOf(season),
    model: { season: model },
    charts: model.crops.flatMap(({ chart }) => chart ?? []),
    tables: [
      spotsTable(season),
      ...season.crops.flatMap((crop) => [
        varietiesTable(season, crop),
        differencesTable(season, crop),
        analysisTable(season, crop),
      ]),
    ].filter(({ rows }) => rows.length > 0),
    figures: figuresOf(season),
    listed: false,
    earlier: true,
  };
}

/** Counted, then weighed as well, then every fruit weighed and looked over. */
const levelOf = ({ garden: { measures } }: SeasonYield): RecordLevel =>
  recordLevel('little', {
    little: measures.fruits.total.value !== null,
    some: measures.kg.total.value !== null,
    full: measures.sound_kg.total.value !== null && measures.sound_kg.total.reason === null,
  });

/** Every figure of the season, shown or not: figures.json holds them all. */
function figuresOf(season: SeasonYield): Figure[] {
  return [
    ...totalFigures(season.garden),
    ...(season.unknown ? totalFigures(season.unknown.totals) : []),
    ...season.spots.flatMap(({ totals }) => totalFigures(totals)),
    ...season.crops.flatMap(({ totals, varieties, comparisons }) => [
      ...totalFigures(totals),
      ...varieties.flatMap((variety) => totalFigures(variety.totals)),
      ...MEASURES.flatMap((measure) => [
        ...comparisons[measure].means.map(({ mean }) => mean),
        ...comparisons[measure].differences.map(({ difference }) => difference),
      ]),
    ]),
  ];
}

const totalFigures = (totals: Totals): Figure[] => [
  totals.plants_set,
  totals.plants_alive,
  totals.area_m2,
  ...MEASURES.flatMap((measure) => Object.values(totals.measures[measure]) as Figure[]),
];
