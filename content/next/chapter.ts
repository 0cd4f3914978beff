import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import { type WhenLine, whenLines } from '../../src/book/when-line.ts';
import { lastSeason } from './last-season.ts';
import { type MissingRecord, missingRecords } from './missing-record.ts';
import { sameGround } from './same-ground.ts';
import { planTable, recordsTable } from './tables.ts';
import { varietyPlan } from './variety-plan.ts';

/** Records told in a home's book; a community's names all that are missing. */
const FEW = 3;

/** What next year? What was learned, what to write down, what to grow again, and where. */
export const next: QuestionChapter = {
  kind: 'question',
  id: 'next',
  write(facts) {
    const { about } = facts.garden;
    const last = lastSeason(facts);
    const missing = missingRecords(facts);
    const ground = sameGround(facts);
    const again = ground?.spots.filter((spot) => spot.again !== null) ?? [];
    return [
      {
        path: 'next/',
        chapter: 'next',
        template: 'next/index.njk',
        title: 'What next year?',
        finding: 'next/finding.njk',
        level: levelOf(facts, missing),
        model: {
          last,
          best: missing[0] ?? null,
          others: missing.slice(1, about.edition === 'home' ? FEW : undefined),
          plan: varietyPlan(facts),
          ground,
          again,
          again_crops: [...new Set(again.flatMap((spot) => spot.again ?? []))],
          sow: sowLines(facts),
        },
        charts: [],
        tables: [recordsTable(missing), planTable(ground)].filter(({ rows }) => rows.length > 0),
        figures: [...(last ? [last.first_days, last.sugar] : []), ...(ground ? [ground.count] : [])],
        cautions: [],
        listed: true,
      },
    ];
  },
};

/** While a season runs its dates are not those of the next: the weeks alone are told. */
function sowLines({ ledger, garden }: Facts): WhenLine[] {
  const lines = whenLines(ledger.years, 'sow', garden.about.locale);
  const is_running = ledger.years[0]?.plan?.running ?? false;
  return is_running ? lines.map((line) => ({ ...line, first: null, last: null })) : lines;
}

/** A harvest, then fruit by fruit, then everything the questions ask for. */
function levelOf({ garden: { seasons } }: Facts, missing: readonly MissingRecord[]): RecordLevel {
  const plantings = seasons.flatMap((season) => season.plantings);
  return recordLevel('little', {
    little: plantings.some(({ fruits, pickings }) => pickings.length > 0 || fruits.some(({ pick }) => pick !== null)),
    some: plantings.some(({ fruits }) => fruits.length > 0),
    full: missing.length === 0,
  });
}
