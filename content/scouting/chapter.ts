import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import { shortCites } from '../../src/book/cites.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import { whenLines } from '../../src/book/when-line.ts';
import { severityKey } from '../../src/records/severity.ts';
import { gradesChart } from './charts.ts';
import { lastLooks } from './season-looks.ts';
import { looksTable, troublesTable } from './tables.ts';
import { troublesOf } from './troubles.ts';

/** What is that spot? The troubles of the crops grown, when to look, and what the looks of this garden found. */
export const scouting: QuestionChapter = {
  kind: 'question',
  id: 'scouting',
  write(facts) {
    const { garden, ledger, reference } = facts;
    const season = lastLooks(facts);
    const troubles = troublesOf(facts);
    const chart = season && garden.about.edition === 'community' ? gradesChart(facts, season) : null;
    const tables = [troublesTable(troubles), ...(season ? [looksTable(season)] : [])];
    return [
      {
        path: 'scouting/',
        chapter: 'scouting',
        template: 'scouting/index.njk',
        title: 'What is that spot?',
        finding: 'scouting/finding.njk',
        level: levelOf(facts),
        model: {
          plant_out: whenLines(ledger.years, 'plant-out', garden.about.locale),
          season: season && { ...season, chart },
          troubles,
          several_crops: ledger.years.length > 1,
          cites: shortCites(reference, troubles.sources),
          scale: severityKey(),
          scale_cites: shortCites(reference, ['blotch-screen']),
        },
        charts: chart ? [chart] : [],
        tables: tables.filter(({ rows }) => rows.length > 0),
        figures: season
          ? [
              season.days,
              season.weeks.looked,
              season.weeks.grown,
              ...season.courses.map(({ days_at_worst }) => days_at_worst),
            ]
          : [],
        cautions: cautionsAt(reference, 'walking', 'scouting'),
        listed: true,
      },
    ];
  },
};

/** A look, then how many of the plants looked at had it, then how bad on two days or more. */
function levelOf({ garden: { seasons } }: Facts): RecordLevel {
  const looks = seasons.flatMap(({ events }) => events.scouting);
  const graded = looks.filter(({ severity }) => severity !== null);
  return recordLevel('little', {
    little: looks.length > 0,
    some: looks.some(({ checked, affected }) => checked !== null && affected !== null),
    full: new Set(graded.map(({ looked_on }) => looked_on.text)).size > 1,
  });
}
