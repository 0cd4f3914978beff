import type { Facts } from '../../src/book/chapter.ts';
import { type SeedRow, seedRow } from '../../src/book/seed-row.ts';
import { LOOK_HOLDS_DAYS } from '../../src/ledger/ripeness/judged-fruit.ts';
import { type CallShare, FEWEST_CALLS, type KeeperCalls, keeperCalls } from '../../src/ledger/ripeness/keeper-calls.ts';

/** Half a sheet for each keeper whose agreement stands, two to a side; never on the website. */
export interface ObserversModel {
  /** In the order of their codes, which tells nothing of how they did. */
  readonly sides: readonly (readonly HalfSheet[])[];
  readonly fewest: number;
  readonly look_holds_days: number;
}

interface HalfSheet {
  readonly code: string;
  readonly calls: number;
  readonly unsure: number;
  /** Too few calls for a number. */
  readonly few: boolean;
  readonly called_ripe: Told;
  readonly ripe: Told;
}

interface Told {
  readonly hits: number;
  readonly units: number;
  readonly seeds: SeedRow | null;
  /** Of ten, whole. */
  readonly low: number;
  readonly high: number;
}

const A_SIDE = 2;

/** Null where nobody who agreed has a call held against the knife, and in a home book. */
export function observersModel({ garden, ledger }: Facts): ObserversModel | null {
  if (garden.about.edition !== 'community') return null;
  const sheets = keeperCalls(
    garden.people,
    ledger.ripeness.flatMap(({ judged }) => judged),
  ).map(halfSheet);
  if (sheets.length === 0) return null;
  return {
    sides: Array.from({ length: Math.ceil(sheets.length / A_SIDE) }, (_, side) =>
      sheets.slice(side * A_SIDE, (side + 1) * A_SIDE),
    ),
    fewest: FEWEST_CALLS,
    look_holds_days: LOOK_HOLDS_DAYS,
  };
}

const halfSheet = ({ code, calls, unsure, called_ripe, ripe }: KeeperCalls): HalfSheet => ({
  code,
  calls,
  unsure,
  few: calls < FEWEST_CALLS,
  called_ripe: toldOf(called_ripe),
  ripe: toldOf(ripe),
});

function toldOf({ hits, units, told }: CallShare): Told {
  const ends = told?.interval ?? { low: 0, high: 1 };
  return {
    hits,
    units,
    seeds: told && seedRow(10 * told.share),
    low: Math.round(10 * ends.low),
    high: Math.round(10 * ends.high),
  };
}
