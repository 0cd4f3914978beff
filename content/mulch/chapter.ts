import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import { shortCites } from '../../src/book/cites.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import { whenLines } from '../../src/book/when-line.ts';
import { firstLaid, ownMulches } from './own-mulch.ts';
import { STRAW_CM, strawLines } from './straw.ts';
import { ownMulchTable, strawTable } from './tables.ts';

const SOURCES = ['monitor-mulch'];

/** When to mulch? Once the ground is warm and the seedlings are past slugs; how much straw that takes. */
export const mulch: QuestionChapter = {
  kind: 'question',
  id: 'mulch',
  write(facts) {
    const { garden, ledger, reference } = facts;
    const own = ownMulches(garden);
    const straw = strawLines(facts);
    const tables = [ownMulchTable(own), strawTable(straw)];
    return [
      {
        path: 'mulch/',
        chapter: 'mulch',
        template: 'mulch/index.njk',
        title: 'When to mulch?',
        finding: 'mulch/finding.njk',
        level: levelOf(facts),
        model: {
          when: whenLines(ledger.years, 'mulch', garden.about.locale),
          own,
          first: firstLaid(own),
          several_seasons: new Set(own.map(({ season }) => season)).size > 1,
          has_cover: own.some(({ cover_of_ten }) => cover_of_ten !== null),
          has_depth: own.some(({ depth_cm }) => depth_cm !== null),
          straw,
          straw_cm: STRAW_CM,
          cites: shortCites(reference, SOURCES),
        },
        charts: [],
        tables: tables.filter(({ rows }) => rows.length > 0),
        figures: straw.flatMap(({ figures }) => figures),
        cautions: cautionsAt(reference, 'mulching'),
        listed: true,
      },
    ];
  },
};

/** What was planted, then the day mulch was laid, then how much of the ground it covered and how deep. */
function levelOf({ garden: { seasons } }: Facts): RecordLevel {
  const laid = seasons.flatMap(({ events }) => events.mulching);
  return recordLevel('little', {
    little: seasons.some(({ plantings }) => plantings.length > 0),
    some: laid.length > 0,
    full: laid.some(({ cover_of_ten, depth_cm }) => cover_of_ten !== null && depth_cm !== null),
  });
}
