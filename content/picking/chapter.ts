import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import { whenLines } from '../../src/book/when-line.ts';
import { cropModels } from './crop-model.ts';
import { keptFruits } from './kept-fruit.ts';
import { lastShares } from './shares.ts';
import { placesTable, sharesTable, stillSoundTable } from './tables.ts';

/** Told where they belong more: those of any walk through the plot at the weekly look, that of the knife where fruit is cut. */
const ELSEWHERE = ['heat', 'storms', 'bitter-fruit'];

/** How to pick and keep it? The order of the work, how each crop is taken off, how long it keeps, and where it went. */
export const picking: QuestionChapter = {
  kind: 'question',
  id: 'picking',
  write(facts) {
    const { garden, ledger, reference } = facts;
    const kept = keptFruits(garden);
    const crops = cropModels(facts, kept);
    const shares = lastShares(garden, ledger.bases);
    const tables = [stillSoundTable(crops), placesTable(crops), ...(shares ? [sharesTable(shares)] : [])];
    return [
      {
        path: 'picking/',
        chapter: 'picking',
        template: 'picking/index.njk',
        title: 'How to pick and keep it?',
        finding: 'picking/finding.njk',
        level: levelOf(facts),
        model: {
          pick: whenLines(ledger.years, 'pick', garden.about.locale),
          crops,
          kept: kept.length,
          ended_sound: kept.filter(({ spoilt }) => !spoilt).length,
          has_seeds: crops.some(({ has_seeds }) => has_seeds),
          days_known: kept.some(({ days }) => days !== null),
          told: crops.filter(({ keeping }) => keeping),
          untold: crops.filter(({ keeping }) => !keeping).map(({ names }) => names.many),
          shares,
        },
        charts: [],
        tables: tables.filter(({ rows }) => rows.length > 0),
        figures: [
          ...crops.flatMap(({ still_sound }) => still_sound.flatMap(({ sound, of_ten }) => [sound, of_ten])),
          ...(shares?.lines ?? []).flatMap(({ fruits, kg }) => [fruits, kg]),
        ],
        cautions: cautionsAt(reference, 'picking', 'weighing', 'keeping', 'sharing').filter(
          (id) => !ELSEWHERE.includes(id),
        ),
        listed: true,
      },
    ];
  },
};

/** What came off, then how a fruit laid by ended, then where it lay and how warm. */
function levelOf({ garden: { seasons } }: Facts): RecordLevel {
  const plantings = seasons.flatMap((season) => season.plantings);
  const keeping = seasons.flatMap(({ events }) => events.keeping);
  return recordLevel('little', {
    little: plantings.some(({ fruits, pickings }) => pickings.length > 0 || fruits.some(({ pick }) => pick !== null)),
    some: keeping.length > 0,
    full: keeping.some(({ place, store_c }) => place !== null && store_c !== null),
  });
}
