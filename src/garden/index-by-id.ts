import { nearest, sameButForSpelling } from '../reading/nearest.ts';
import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn, type TreePath } from '../reading/source.ts';

/** The records of one kind by id, and what else is known of ids there. */
export interface Index<T> {
  readonly byId: ReadonlyMap<string, Entry<T>>;
  /** Ids of records that were refused for another reason. */
  readonly spoilt: ReadonlySet<string>;
  /** False when a file of this kind could not be read at all. */
  readonly complete: boolean;
}

interface Listed<T> {
  readonly entries: readonly Entry<T>[];
  readonly spoilt: readonly string[] | null;
}

/** Indexes records by id and names the ones whose id stands twice, case not counted. */
export function indexById<T extends { id: string }>(
  listings: readonly Listed<T>[],
  what: string,
): { index: Index<T>; problems: Problem[] } {
  const byId = new Map<string, Entry<T>>();
  const folded = new Map<string, Entry<T>>();
  const problems: Problem[] = [];
  for (const entry of listings.flatMap(({ entries }) => entries)) {
    const { id } = entry.record;
    const first = folded.get(id.toLowerCase());
    if (first) problems.push(duplicate(first, entry, what));
    else {
      byId.set(id, entry);
      folded.set(id.toLowerCase(), entry);
    }
  }
  const spoilt = new Set(listings.flatMap((listing) => listing.spoilt ?? []));
  return { index: { byId, spoilt, complete: listings.every((listing) => listing.spoilt !== null) }, problems };
}

function duplicate(first: Entry<{ id: string }>, second: Entry<{ id: string; pick?: unknown }>, what: string): Problem {
  const bothPicked = 'pick' in first.record && first.record.pick && second.record.pick;
  const { line } = first.source.locate([...first.path, 'id']);
  const where = `line ${line}${first.source.file === second.source.file ? '' : ` of ${first.source.file}`}`;
  return problemIn(second, ['id'], {
    code: bothPicked ? 'picked-twice' : 'duplicate-id',
    message: bothPicked
      ? `fruit ${second.record.id} is picked twice, first at ${where}`
      : `the ${what} ${second.record.id} stands already at ${where}`,
    hint: bothPicked
      ? 'keep one, or give the other fruit an id of its own'
      : 'give one of them another id; capitals do not make ids differ',
  });
}

/** The record an id refers to, or the problem that there is none; both null when it was refused for another reason. */
export function lookUp<T>(
  index: Index<T>,
  id: string,
  from: Entry<unknown>,
  field: TreePath,
  what: string,
): { found: T | null; problem: Problem | null } {
  const entry = index.byId.get(id);
  if (entry) return { found: entry.record, problem: null };
  if (index.spoilt.has(id) || !index.complete) return { found: null, problem: null };
  const known = [...index.byId.keys(), ...index.spoilt];
  const respelt = known.find((other) => sameButForSpelling(other, id));
  if (respelt) {
    const complaint = {
      code: 'id-spelling',
      message: `there is no ${what} "${id}", but there is "${respelt}"`,
      hint: `write ${respelt}; capitals and hyphens count`,
    };
    return { found: null, problem: problemIn(from, field, complaint) };
  }
  const near = nearest(id, known);
  const hint =
    known.length === 0
      ? `no ${what} is recorded yet`
      : `${near ? `did you mean ${near}? ` : ''}the ids there are: ${some(known)}`;
  return {
    found: null,
    problem: problemIn(from, field, { code: 'dangling-id', message: `there is no ${what} "${id}"`, hint }),
  };
}

const MOST = 12;

function some(ids: readonly string[]): string {
  const sorted = [...ids].sort();
  return sorted.length > MOST
    ? `${sorted.slice(0, MOST).join(', ')} and ${sorted.length - MOST} more`
    : sorted.join(', ');
}
