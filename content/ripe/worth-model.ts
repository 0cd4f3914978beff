import type { Facts } from '../../src/book/chapter.ts';
import type { CropRipeness, WeighedEvidence } from '../../src/ledger/ripeness/crop-ripeness.ts';
import { ENOUGH } from '../../src/ledger/ripeness/enough.ts';
import type { SignWorth } from '../../src/ledger/ripeness/sign-worth.ts';
import type { SignCounts } from '../../src/statistics/signs/likelihood-ratio.ts';

/** What signs are worth in both questions, in words. */
export interface WorthModel {
  /** In the order of the signs' lines; a line no record tells is left out. */
  readonly rows: readonly WorthRow[];
  /** Some sign can be told in the question. */
  readonly told: { readonly ripe_yet: boolean; readonly too_late: boolean };
  /** The most over-ripe fruits looked over for any one sign. */
  readonly over: number;
  readonly need_over: number;
  /** How the judged fruits came to be cut. */
  readonly ways: CropRipeness['ways'];
  /** The sign whose range lies furthest on the side of ripe; null when none lies there. */
  readonly best: BestSign | null;
}

interface WorthRow {
  /** Place among the signs' lines. */
  readonly line: number;
  readonly ripe_yet: WorthCell;
  readonly too_late: WorthCell;
}

export interface WorthCell {
  /** Null where the cuts are too few. */
  readonly says: Saying | null;
  readonly counts: SignCounts;
  /** Null where none was cut by lot. */
  readonly by_lot: SignCounts | null;
}

/** "3 times as often in ripe ones; 2 to 7", as far as numbers go. */
interface Saying {
  readonly leans: 'to-yes' | 'to-no' | 'unsure';
  /** In the group where it shows oftener; of an unsure sign in the group of the answer yes. */
  readonly times: string;
  readonly low: string;
  readonly high: string;
}

interface BestSign extends Saying {
  readonly line: number;
}

/** Beyond so many times the range is only said to be wider. */
const MOST_TIMES = 20;
/** Below so many a tenth matters. */
const TENTHS_BELOW = 3;

export function worthModel(facts: Facts, { days, signs, ways }: CropRipeness): WorthModel {
  const lines: readonly WeighedEvidence[] = [...(days ? [days] : []), ...signs];
  const rows = lines.flatMap(({ worth }, line): WorthRow[] => {
    const [ripe, late] = worth;
    if (!ripe || !late || lookedOf(ripe.counts) === 0) return [];
    return [{ line, ripe_yet: cellOf(facts, ripe), too_late: cellOf(facts, late) }];
  });
  return {
    rows,
    told: {
      ripe_yet: rows.some(({ ripe_yet }) => ripe_yet.says !== null),
      too_late: rows.some(({ too_late }) => too_late.says !== null),
    },
    over: Math.max(0, ...rows.map(({ too_late }) => too_late.counts.yes.looked)),
    need_over: ENOUGH.over,
    ways,
    best: bestOf(facts, lines),
  };
}

function bestOf(facts: Facts, lines: readonly WeighedEvidence[]): BestSign | null {
  const leaning = lines.flatMap(({ worth }, line) => {
    const [ripe] = worth;
    return ripe?.leans === 'to-yes' ? [{ line, ripe, low: ripe.ratio.interval?.low ?? 0 }] : [];
  });
  const [best] = leaning.toSorted((a, b) => b.low - a.low);
  const says = best && sayingOf(facts, best.ripe);
  return best && says ? { line: best.line, ...says } : null;
}

const lookedOf = ({ yes, no }: SignCounts): number => yes.looked + no.looked;

const cellOf = (facts: Facts, worth: SignWorth): WorthCell => ({
  says: sayingOf(facts, worth),
  counts: worth.counts,
  by_lot: lookedOf(worth.by_lot) > 0 ? worth.by_lot : null,
});

/** Turned over where it shows oftener in the other group, so that it is always so many times as often. */
function sayingOf({ format }: Facts, { ratio: { value, interval }, leans }: SignWorth): Saying | null {
  if (value === null || interval === null || leans === null) return null;
  const [times, low, high] =
    leans === 'to-no' ? [1 / value, 1 / interval.high, 1 / interval.low] : [value, interval.low, interval.high];
  const word = (one: number): string => {
    if (!(one <= MOST_TIMES)) return `more than ${format.count(MOST_TIMES)}`;
    return format.decimal(one, Math.round(10 * one) < 10 * TENTHS_BELOW ? 1 : 0);
  };
  return { leans, times: word(times), low: word(low), high: word(high) };
}
