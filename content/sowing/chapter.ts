import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import { whenLines } from '../../src/book/when-line.ts';
import { cropModels } from './crop-model.ts';
import { seedLines } from './seed-lines.ts';
import { seedRows } from './seed-rows.ts';
import { emergenceTable, seedsTable } from './tables.ts';

/** When to sow? Counted back from planting out, how warm, and how many seeds for the plants wanted. */
export const sowing: QuestionChapter = {
  kind: 'question',
  id: 'sowing',
  write(facts) {
    const { garden, ledger, reference } = facts;
    const { locale } = garden.about;
    const crops = cropModels(facts);
    const lines = seedLines(facts);
    const tables = [seedsTable(lines), emergenceTable(crops)].filter(({ rows }) => rows.length > 0);
    return [
      {
        path: 'sowing/',
        chapter: 'sowing',
        template: 'sowing/index.njk',
        title: 'When to sow?',
        finding: 'sowing/finding.njk',
        level: levelOf(facts),
        model: {
          sow: whenLines(ledger.years, 'sow', locale),
          plant_out: whenLines(ledger.years, 'plant-out', locale),
          plan: ledger.years[0]?.plan?.label ?? null,
          frost: ledger.frosts?.last_of_spring ?? null,
          crops,
          warmth: crops.flatMap(({ names, crop: { sowing: raised } }) =>
            raised ? [{ names, low_c: raised.soil_best_low_c, high_c: raised.soil_best_high_c }] : [],
          ),
          rows: seedRows(lines),
          tested: lines.some(({ test }) => test !== null),
          by_law: lines.some(({ test, seeds }) => test === null && seeds.some(({ figure }) => figure.value !== null)),
        },
        charts: [],
        tables,
        figures: lines.flatMap(({ seeds }) => seeds.map(({ figure }) => figure)),
        cautions: cautionsAt(reference, 'sowing'),
        listed: true,
      },
    ];
  },
};

/** What was planted, then the day it was sown, then a germination test or a counted tray. */
function levelOf({ garden: { seasons, lots } }: Facts): RecordLevel {
  const plantings = seasons.flatMap((season) => season.plantings);
  const sowings = seasons.flatMap(({ events }) => events.sowings);
  return recordLevel('little', {
    little: plantings.length > 0,
    some: sowings.length > 0 || plantings.some(({ sown_on }) => sown_on !== null),
    full: sowings.some(({ emerged }) => emerged !== null) || lots.some(({ tests }) => (tests ?? []).length > 0),
  });
}
