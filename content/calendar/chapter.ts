import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import { type WhenLine, whenLines } from '../../src/book/when-line.ts';
import { isOneDay } from '../../src/dated.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { type CropYear, YEAR_STEPS, type YearStep } from '../../src/ledger/year/crop-year.ts';
import { yearChart } from './charts.ts';
import { eventsOf } from './events.ts';
import { yearTable } from './tables.ts';

/** What comes when? The year of each crop from sowing to picking, as a strip, as lines, and as a calendar file. */
export const calendar: QuestionChapter = {
  kind: 'question',
  id: 'calendar',
  write(facts) {
    const { years } = facts.ledger;
    const crops = years.map((year) => ({ year, chart: yearChart(facts, year), lines: linesOf(facts, year) }));
    const plan = years[0]?.plan ?? null;
    const events = crops.flatMap(({ year, lines }) => (plan ? eventsOf(year.crop.id, plan.label, lines) : []));
    return [
      {
        path: 'calendar/',
        chapter: 'calendar',
        template: 'calendar/index.njk',
        title: 'What comes when?',
        finding: 'calendar/finding.njk',
        level: levelOf(facts),
        model: {
          plan: plan && { label: plan.label, running: plan.running },
          crops: crops.map(({ year, chart, lines }) => ({
            names: cropNames(year.crop, facts.garden.about.locale),
            chart: chart?.id ?? null,
            lines,
            short: lines.filter(({ step }) => SHORT.includes(step)),
            missing: YEAR_STEPS.filter((step) => year.bands[step] === null),
          })),
          dated: events.length > 0,
        },
        charts: crops.flatMap(({ chart }) => chart ?? []),
        tables: crops.flatMap(({ year, chart }) => (chart ? [] : [yearTable(year)])),
        figures: [],
        cautions: [],
        events,
        listed: true,
      },
    ];
  },
};

/** Steps the finding tells. */
const SHORT: readonly YearStep[] = ['sow', 'plant-out', 'pick'];

const linesOf = ({ garden }: Facts, year: CropYear): WhenLine[] =>
  YEAR_STEPS.flatMap((step) => whenLines([year], step, garden.about.locale));

/** A day of planting out, then days of single fruits, then flowers and mulch as well. */
function levelOf({ garden: { seasons } }: Facts): RecordLevel {
  const plantings = seasons.flatMap((season) => season.plantings);
  const events = seasons.map((season) => season.events);
  return recordLevel('little', {
    little: plantings.some(({ planted_on }) => isOneDay(planted_on)),
    some: plantings.some(({ fruits }) => fruits.some(({ set, pick }) => set?.set_on || pick)),
    full: events.some(({ flowering, mulching }) => flowering.length > 0 && mulching.length > 0),
  });
}
