import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts } from '../../src/book/chapter.ts';
import type { Page } from '../../src/book/page.ts';
import type { Day } from '../../src/day.ts';
import type { Reason } from '../../src/figure.ts';
import type { Fruit, Season } from '../../src/garden/garden.ts';
import { SIGN_KEYS, SIGNS } from '../../src/records/sign.ts';
import { type BandDates, bandDates, printedLine } from './window-dates.ts';
import { soonest } from './window-model.ts';

/** The cautions of the work stand on the back. */
const ROWS_A_SIDE = 15;

interface ListRow {
  readonly fruit: string;
  readonly spot: string;
  readonly variety: string | null;
  /** Null with `cannot`. */
  readonly window: BandDates | null;
  readonly cannot: Reason | null;
  /** What it showed when somebody last looked; null where nobody did. */
  readonly seen: {
    readonly on: Day;
    readonly signs: readonly { readonly sign: string; readonly step: string }[];
  } | null;
  readonly next_visit: Day | null;
}

/** Which fruit to look at this week, for the clipboard; with nothing on the vine the same with blank lines. */
export function fruitListPage(facts: Facts): Page {
  const { windows } = facts.ledger;
  const season = windows.find((one) => one.season !== null)?.season ?? null;
  const rows = soonest(windows.flatMap(({ growing }) => growing)).map(
    ({ planting, fruit, window, cannot }): ListRow => ({
      fruit: fruit.id,
      spot: planting.spot.id,
      variety: planting.variety?.name ?? null,
      window: window && bandDates(window.day, printedLine(window).ripe.most),
      cannot,
      seen: season && lastSeen(season, fruit),
      // One that should long be ripe is looked at first.
      next_visit: window?.next_visit ?? (cannot?.code === 'outgrown' ? facts.today : null),
    }),
  );
  const of = Math.max(1, Math.ceil(rows.length / ROWS_A_SIDE));
  const sides = Array.from({ length: of }, (_, side) => {
    const own = rows.slice(side * ROWS_A_SIDE, (side + 1) * ROWS_A_SIDE);
    return { number: side + 1, of, rows: own, blank: Array.from({ length: ROWS_A_SIDE - own.length }, () => null) };
  });
  const title = 'This week’s fruit';
  return {
    path: 'sheets/fruit-list/',
    chapter: 'ripe',
    template: 'ripe/fruit-list.njk',
    title,
    finding: null,
    level: null,
    model: {
      sheet: { title, landscape: false },
      sides,
      day: rows.length > 0 ? facts.today : null,
      reasons: reasonsOf(rows),
    },
    charts: [],
    tables: [],
    figures: [],
    cautions: cautionsAt(facts.reference, 'picking').filter((id) => ['storms', 'wasps', 'lifting'].includes(id)),
    listed: false,
    form: 'sheet',
  };
}

/** Each reason once, for the words under the list. */
const reasonsOf = (rows: readonly ListRow[]): Reason[] => [
  ...new Map(rows.flatMap(({ cannot }) => (cannot ? [[cannot.code, cannot] as const] : []))).values(),
];

function lastSeen({ visits }: Season, { id }: Fruit): ListRow['seen'] {
  const looks = visits.flatMap(({ visited_on, fruits }) =>
    fruits.filter(({ fruit }) => fruit === id).map((look) => ({ visited_on, look })),
  );
  const last = looks.at(-1);
  if (!last) return null;
  const signs = SIGN_KEYS.flatMap((key) => {
    const step = last.look[key];
    return step === null ? [] : [{ sign: SIGNS[key].title, step: step.replace('-', ' ') }];
  });
  return { on: last.visited_on, signs };
}
