import type { QuestionChapter } from '../../src/book/chapter.ts';
import type { Page } from '../../src/book/page.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import type { Figure } from '../../src/figure.ts';
import type { SeasonMaturity } from '../../src/ledger/maturity/season-maturity.ts';
import { ORIGINS, type VarietyMaturity } from '../../src/ledger/maturity/variety-maturity.ts';
import { type SeasonModel, seasonModel } from './season-model.ts';
import { maturityTable } from './tables.ts';

/** How long to ripe? From sowing, planting and fruit set to a ripe pick, by variety and season. */
export const maturity: QuestionChapter = {
  kind: 'question',
  id: 'maturity',
  write(facts) {
    const pages = facts.ledger.maturity
      .map((season) => ({ season, model: seasonModel(facts, season) }))
      .filter(({ model }) => model.crops.length > 0)
      .reverse();
    const [latest, ...earlier] = pages;
    if (!latest) return [emptyPage()];
    const others = earlier.map(({ season: { season } }) => ({ label: season.label, path: pathOf(season.slug) }));
    return [
      {
        ...seasonPage(latest.season, { ...latest.model, others }),
        path: 'maturity/',
        title: FRAME.title,
        listed: true,
        earlier: false,
      },
      ...earlier.map(({ season, model }) => seasonPage(season, model)),
    ];
  },
};

const FRAME = {
  chapter: 'maturity',
  template: 'maturity/index.njk',
  title: 'How long to ripe?',
  finding: 'maturity/finding.njk',
  cautions: [],
};

const pathOf = (slug: string): string => `maturity/${slug.toLowerCase()}/`;

const emptyPage = (): Page => ({
  ...FRAME,
  path: 'maturity/',
  level: recordLevel('little', { little: false, some: false, full: false }),
  model: { season: null },
  charts: [],
  tables: [],
  figures: [],
  listed: true,
});

function seasonPage(season: SeasonMaturity, model: SeasonModel): Page {
  const table = maturityTable(season);
  return {
    ...FRAME,
    path: pathOf(season.season.slug),
    title: `How long to ripe in ${season.season.label}?`,
    level: levelOf(season),
    model: { season: model },
    charts: model.crops.flatMap(({ chart }) => chart ?? []),
    tables: table.rows.length > 0 ? [table] : [],
    figures: season.crops.flatMap(({ varieties }) => varieties.flatMap(figuresOf)),
    listed: false,
    earlier: true,
  };
}

/** Planted and picked, then each fruit, then the day it set as well. */
function levelOf({ crops }: SeasonMaturity): RecordLevel {
  const all = crops.flatMap(({ varieties }) => varieties);
  return recordLevel('little', {
    little: true,
    some: all.some(({ days }) => days.planting.n > 0),
    full: all.some(({ days }) => days.set.n > 0),
  });
}

const figuresOf = ({ set, ripened, days, heat }: VarietyMaturity): Figure[] => [
  set,
  ripened,
  ...[days, heat].flatMap((lengths) =>
    ORIGINS.flatMap((origin) => [lengths[origin].earliest, lengths[origin].middle, lengths[origin].last]),
  ),
];
