import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import { whenLines } from '../../src/book/when-line.ts';
import { loadChart } from './charts.ts';
import { cropModels } from './crop-model.ts';
import { lateLines } from './late-lines.ts';
import { cropLoads } from './load.ts';
import { countOf, seasonCounts } from './season-counts.ts';
import { countsTable, loadTable } from './tables.ts';

/** Thin or not? How many fruits a plant is left, what our plants carried, and the day after which a set comes too late. */
export const thinning: QuestionChapter = {
  kind: 'question',
  id: 'thinning',
  write(facts) {
    const { garden, ledger } = facts;
    const crops = cropModels(facts);
    const counts = seasonCounts(facts);
    const last = counts.at(-1) ?? null;
    const community = garden.about.edition === 'community';
    const loads = cropLoads(facts).map((load) => ({ ...load, chart: community ? loadChart(facts, load) : null }));
    const charts = loads.flatMap(({ chart }) => chart ?? []);
    return [
      {
        path: 'thinning/',
        chapter: 'thinning',
        template: 'thinning/index.njk',
        title: 'Thin or not?',
        finding: 'thinning/finding.njk',
        level: levelOf(facts),
        model: {
          set: whenLines(ledger.years, 'set', garden.about.locale),
          crops,
          told: crops.filter(({ keep, young }) => keep && !young),
          young: crops.filter(({ young }) => young),
          only_young: crops.length > 0 && crops.every(({ young }) => young),
          untold: crops.filter(({ keep, young }) => !keep && !young),
          late: lateLines(crops),
          cites: [...new Set(crops.flatMap(({ cites }) => cites))],
          plan: ledger.years[0]?.plan ?? null,
          loads,
          counts,
          fates: (counts[0]?.fates ?? []).filter(({ fate }) => counts.some((one) => countOf(one, fate) > 0)),
          last: last && { ...last, thinned: countOf(last, 'thinned'), aborted: countOf(last, 'aborted') },
        },
        charts,
        tables: [loadTable(loads), countsTable(counts)].filter(({ rows }) => rows.length > 0),
        figures: [
          ...crops.flatMap(({ last_set }) => last_set?.days ?? []),
          ...loads.flatMap(({ kept, mean_kg, rows }) => [
            kept,
            mean_kg,
            ...rows.flatMap((row) => [row.kept, row.mean_kg]),
          ]),
          ...counts.flatMap(({ fates, fruits }) => [fruits, ...fates.map(({ figure }) => figure)]),
        ],
        // The one step that needs a tool is the cut.
        cautions: ['knife'],
        listed: true,
      },
    ];
  },
};

/** What came off, then what was taken off or dropped before, then every fruit weighed. */
function levelOf({ garden: { seasons } }: Facts): RecordLevel {
  const plantings = seasons.flatMap((season) => season.plantings);
  const fruits = plantings.flatMap((planting) => planting.fruits);
  const picked = fruits.filter(({ fate }) => fate === 'picked');
  return recordLevel('little', {
    little: picked.length > 0 || plantings.some(({ pickings }) => pickings.length > 0),
    some: fruits.some(({ fate }) => fate === 'thinned' || fate === 'aborted'),
    full: picked.some(({ pick }) => pick?.mass_kg != null),
  });
}
