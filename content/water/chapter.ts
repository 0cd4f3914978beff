import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import { shortCites } from '../../src/book/cites.ts';
import type { Page } from '../../src/book/page.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import type { Table } from '../../src/book/table.ts';
import { whenLines } from '../../src/book/when-line.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { measuresOf } from '../../src/garden/measures.ts';
import { ownStation } from '../../src/garden/own-station.ts';
import type { SeasonWater } from '../../src/ledger/water/season-water.ts';
import { type BackModel, backModel, figuresOfBack } from './back-model.ts';
import { cardPages } from './card.ts';
import { levelChart, weeksChart } from './charts.ts';
import { dipChartPage } from './dip-chart.ts';
import { figuresOfGiven, givenModel } from './given-model.ts';
import { figuresOfNeed, type NeedModel, needModels } from './need-model.ts';
import { backTable, dailyTable, needTable, weeklyTable } from './tables.ts';
import { tankChart } from './tank-charts.ts';
import { figuresOfTank, tankModel } from './tank-model.ts';
import { tankTables } from './tank-tables.ts';

/** Watering is due when so much of the soil is dry: common practice, no source. */
const FINGER_CM = 5;

/** How much water? The finger first; then what a spot wants, what it got, and whether the tank lasts. */
export const water: QuestionChapter = {
  kind: 'question',
  id: 'water',
  write(facts) {
    const needs = needModels(facts);
    const past = (facts.ledger.water?.seasons ?? []).flatMap((season) => {
      const back = backModel(facts, season);
      return back ? [{ season, back }] : [];
    });
    const latest = past.at(-1) ?? null;
    const earlier = past.slice(0, -1).toReversed();
    const dipChart = dipChartPage(facts);
    return [
      mainPage(facts, needs, latest, earlier),
      ...earlier.map(({ season, back }) => earlierPage(facts, season, back)),
      ...cardPages(facts, needs),
      ...(dipChart ? [dipChart] : []),
    ];
  },
};

interface Looked {
  readonly season: SeasonWater;
  readonly back: BackModel;
}

const pathOf = ({ season }: SeasonWater): string => `water/${season.slug.toLowerCase()}/`;

function mainPage(facts: Facts, needs: readonly NeedModel[], latest: Looked | null, earlier: readonly Looked[]): Page {
  const { garden, ledger, reference } = facts;
  const { locale } = garden.about;
  const { can_l, can_measured } = measuresOf(garden.about);
  const table = needTable(needs);
  const drawn = latest && chartsOf(facts, latest);
  const given = latest ? null : givenModel(facts);
  const tank = tankModel(facts);
  const tankDrawn = tankChart(facts);
  return {
    path: 'water/',
    chapter: 'water',
    template: 'water/index.njk',
    title: 'How much water?',
    finding: 'water/finding.njk',
    level: levelOf(facts),
    model: {
      finger_cm: FINGER_CM,
      even: whenLines(ledger.years, 'set', locale),
      needs,
      /** Crops without a number beside others that have one. */
      unknown:
        needs.length === 0
          ? []
          : ledger.years.flatMap(({ crop }) =>
              needs.some(({ id }) => id === crop.id) ? [] : [cropNames(crop, locale).many],
            ),
      lacks: needs.length > 0 ? null : lackingOf(facts),
      back: latest?.back ?? null,
      given,
      level_chart: drawn?.level?.id ?? null,
      weeks_chart: drawn?.weeks?.id ?? null,
      tank,
      earlier: earlier.map(({ season }) => ({ label: season.season.label, path: pathOf(season) })),
      can_l,
      can_measured,
      cites: shortCites(
        reference,
        ledger.years.flatMap(({ crop }) => crop.water?.sources ?? []),
      ),
    },
    charts: [
      ...(drawn?.level ? [drawn.level] : []),
      ...(drawn?.weeks ? [drawn.weeks] : []),
      ...(tankDrawn ? [tankDrawn] : []),
    ],
    tables: [...(table.rows.length > 0 ? [table] : []), ...(latest ? seasonTables(latest) : []), ...tankTables(facts)],
    figures: [
      ...needs.flatMap(figuresOfNeed),
      ...(latest ? figuresOfBack(latest.back) : []),
      ...(given ? figuresOfGiven(given) : []),
      ...(tank ? figuresOfTank(tank) : []),
    ],
    /** What every watering asks for, then what a tank does beside it. */
    cautions: [...new Set([...cautionsAt(reference, 'watering'), ...cautionsAt(reference, 'tank')])],
    listed: true,
  };
}

const earlierPage = (facts: Facts, season: SeasonWater, back: BackModel): Page => ({
  path: pathOf(season),
  chapter: 'water',
  template: 'water/earlier.njk',
  title: `What water did the spots get in ${season.season.label}?`,
  finding: null,
  level: levelOf(facts),
  model: { back, level_chart: null, weeks_chart: null },
  charts: [],
  tables: seasonTables({ season, back }),
  figures: figuresOfBack(back),
  cautions: [],
  listed: false,
  earlier: true,
});

function seasonTables({ season: { season, spots }, back }: Looked): Table[] {
  const waters = spots.map(({ water }) => water);
  return [backTable(back, season.slug), weeklyTable(season, waters), dailyTable(season, waters)];
}

/** Of the spot that went short on most days, else of the first. */
function chartsOf(
  facts: Facts,
  { season, back }: Looked,
): { readonly level: Chart | null; readonly weeks: Chart | null } {
  const shown = season.spots.find(({ account }) => account.spot === back.driest) ?? season.spots[0];
  if (!shown) throw new RangeError(`invalid season: ${season.season.slug} has no spot`);
  return { level: levelChart(facts, season, shown.water), weeks: weeksChart(facts, season, shown.water) };
}

/** The first thing that is missing for a number. */
function lackingOf({ garden, ledger }: Facts): 'trait' | 'season' | 'thermometer' | 'place' | 'years' {
  const { years } = ledger;
  if (years.length > 0 && years.every(({ crop }) => crop.water === null)) return 'trait';
  if (garden.seasons.length === 0 || years.length === 0) return 'season';
  const days = ownStation(garden)?.days ?? [];
  if (!days.some(({ tmin_c, tmax_c }) => tmin_c !== null && tmax_c !== null)) return 'thermometer';
  return garden.about.place === null ? 'place' : 'years';
}

/** A word for a watering, then cans with gauge and thermometer, then five years of these. */
function levelOf({ garden, ledger }: Facts): RecordLevel {
  const days = ownStation(garden)?.days ?? [];
  const waterings = garden.seasons.flatMap(({ events }) => events.waterings);
  return recordLevel('little', {
    little: waterings.length > 0 || days.length > 0,
    some:
      waterings.length > 0 &&
      days.some(({ rain_mm }) => rain_mm !== null) &&
      days.some(({ tmin_c, tmax_c }) => tmin_c !== null && tmax_c !== null),
    full: waterings.length > 0 && (ledger.water?.crops ?? []).some(({ stages }) => stages.length > 0),
  });
}
