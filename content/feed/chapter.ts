import { K_IN_K2O, P_IN_P2O5 } from '../../src/agronomy/nutrients.ts';
import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts, QuestionChapter } from '../../src/book/chapter.ts';
import { shortCites } from '../../src/book/cites.ts';
import { type RecordLevel, recordLevel } from '../../src/book/record-level.ts';
import { whenLines } from '../../src/book/when-line.ts';
import { fedOf } from './fed-lines.ts';
import { lateLines } from './late-lines.ts';
import { fedTable, lateTable } from './tables.ts';
import { targetsOf } from './targets.ts';

/** Said of the steps already. */
const PRACTICE = 'trade-practice';

/** How to feed? For leaf and no longer; what each spot got, and nitrogen that came too late. */
export const feed: QuestionChapter = {
  kind: 'question',
  id: 'feed',
  write(facts) {
    const { garden, ledger, reference } = facts;
    const season = garden.seasons.at(-1) ?? null;
    const targets = targetsOf(facts);
    const fed = season && fedOf(facts, season);
    const late = season ? lateLines(facts, season) : [];
    const tables = [...(fed ? [fedTable(fed), lateTable(late, fed.season)] : [])];
    const used = reference.materials.filter(({ id }) => season?.events.feeding.some(({ material }) => material === id));
    const cited = (of: readonly (readonly string[] | undefined)[]): string[] =>
      shortCites(
        reference,
        of.flatMap((sources) => sources ?? []),
      );
    return [
      {
        path: 'feed/',
        chapter: 'feed',
        template: 'feed/index.njk',
        title: 'How to feed?',
        finding: 'feed/finding.njk',
        level: levelOf(facts),
        model: {
          leaf: whenLines(ledger.years, 'feed-leaf', garden.about.locale),
          /** Of every crop here the flowers are male and female in one. */
          together: targets.length > 0 && ledger.years.every(({ crop }) => crop.flowering?.sexes === 'together'),
          wanted: targets.filter(({ n_g_per_m2 }) => n_g_per_m2 !== null),
          unknown: targets.flatMap(({ names, n_g_per_m2 }) => (n_g_per_m2 ? [] : [names.many])),
          season: season?.label ?? null,
          fed,
          late,
          of_100: { p: 100 * P_IN_P2O5, k: 100 * K_IN_K2O },
          cites: {
            crops: cited(ledger.years.map(({ crop }) => crop.feeding?.sources)),
            materials: cited(used.map(({ sources }) => sources.filter((id) => id !== PRACTICE))),
          },
        },
        charts: [],
        tables: tables.filter(({ rows }) => rows.length > 0),
        figures: [...targets.flatMap(({ figures }) => figures), ...(fed?.figures ?? [])],
        cautions: cautionsAt(reference, 'feeding'),
        listed: true,
      },
    ];
  },
};

/** What was given, then how much of it, then the bag’s numbers and the day the first female flower opened. */
function levelOf({ garden: { seasons } }: Facts): RecordLevel {
  const feedings = seasons.flatMap(({ events }) => events.feeding);
  const flowers = seasons.flatMap(({ events }) => events.flowering);
  return recordLevel('little', {
    little: feedings.length > 0,
    some: feedings.some(
      ({ mass_kg, volume_l, barrows, cups }) => (mass_kg ?? volume_l ?? barrows ?? cups ?? null) !== null,
    ),
    full: feedings.some(({ label_n }) => label_n !== null) && flowers.some(({ what }) => what === 'first-female'),
  });
}
