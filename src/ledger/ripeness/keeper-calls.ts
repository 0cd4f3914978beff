import { addDays } from '../../day.ts';
import { mayBeNamed } from '../../garden/consent.ts';
import type { Person } from '../../garden/garden.ts';
import { type MemberShare, memberShares } from '../../statistics/member-shares.ts';
import { type JudgedFruit, LOOK_HOLDS_DAYS } from './judged-fruit.ts';

/** Calls held against the knife below which a keeper is told nothing in numbers. No source: a judgement. */
export const FEWEST_CALLS = 8;

const LEVEL = 0.9;

/** How one keeper's calls came out. */
export interface KeeperCalls {
  /** Never the name. */
  readonly code: string;
  /** Fruits the keeper called ripe, not yet or unsure and that were cut while the look held. */
  readonly calls: number;
  readonly unsure: number;
  /** Of those called ripe, how many were. */
  readonly called_ripe: CallShare;
  /** Of those that were ripe, how many the keeper had called so; unsure is not a call. */
  readonly ripe: CallShare;
}

export interface CallShare {
  readonly hits: number;
  readonly units: number;
  /** Partly drawn to what all keepers have in common; null below the fewest calls, or where nothing was seen of it. */
  readonly told: MemberShare | null;
}

type Call = 'ripe' | 'not-yet' | 'unsure';

/**
 * By code. Of keepers whose agreement stands: of anybody else nothing is counted, neither by their code nor in what the
 * others are drawn to. Each fruit counts once for a keeper, by their last call in the days before it came off.
 */
export function keeperCalls(people: readonly Person[], judged: readonly JudgedFruit[]): KeeperCalls[] {
  const keepers = people.filter(mayBeNamed).flatMap(({ id, code }) => {
    const calls = judged.flatMap((one) => {
      const call = lastCall(one, id);
      return call === null ? [] : [{ call, is_ripe: one.is_ripe }];
    });
    return calls.length === 0 ? [] : [{ code, calls }];
  });
  const shares = (counted: (calls: readonly { call: Call; is_ripe: boolean }[]) => Counted): CallShare[] => {
    const groups = keepers.map(({ calls }) => counted(calls));
    const told = groups.length > 0 ? memberShares(groups, LEVEL) : [];
    return groups.map((group, index) => {
      const enough = (keepers[index]?.calls.length ?? 0) >= FEWEST_CALLS && group.units > 0;
      return { ...group, told: enough ? (told[index] ?? null) : null };
    });
  };
  const calledRipe = shares((calls) =>
    countOf(
      calls.filter(({ call }) => call === 'ripe'),
      ({ is_ripe }) => is_ripe,
    ),
  );
  const ripe = shares((calls) =>
    countOf(
      calls.filter(({ is_ripe }) => is_ripe),
      ({ call }) => call === 'ripe',
    ),
  );
  return keepers.map(({ code, calls }, index) => ({
    code,
    calls: calls.length,
    unsure: calls.filter(({ call }) => call === 'unsure').length,
    called_ripe: calledRipe[index] ?? NONE,
    ripe: ripe[index] ?? NONE,
  }));
}

type Counted = Pick<CallShare, 'hits' | 'units'>;

const NONE: CallShare = { hits: 0, units: 0, told: null };

const countOf = <T>(all: readonly T[], isHit: (one: T) => boolean): Counted => ({
  hits: all.filter(isHit).length,
  units: all.length,
});

function lastCall({ season, fruit }: JudgedFruit, keeper: string): Call | null {
  const off = (fruit.pick?.picked_on ?? fruit.cut?.cut_on)?.first;
  if (!off) return null;
  const calls = season.visits
    .filter(({ by, visited_on }) => by === keeper && visited_on <= off && visited_on >= addDays(off, -LOOK_HOLDS_DAYS))
    .flatMap(({ fruits }) => fruits.filter((look) => look.fruit === fruit.id))
    .flatMap(({ call }) => (call === null ? [] : [call]));
  return calls.at(-1) ?? null;
}
