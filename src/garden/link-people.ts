import type { Listing } from '../reading/garden-records.ts';
import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { PersonRecord } from '../records/person.ts';
import { checkPerson } from './check-person.ts';
import { type Index, indexById } from './index-by-id.ts';

export interface People {
  /** False when the garden has no people.yaml: then nobody's name is published, and nobody is missed. */
  readonly listed: boolean;
  /** By code. */
  readonly people: readonly PersonRecord[];
  readonly index: Index<PersonRecord>;
  readonly problems: readonly Problem[];
}

/** Everybody of people.yaml, with the codes and dates that contradict each other. */
export function linkPeople(listings: readonly Listing<'people'>[]): People {
  const { index, problems } = indexById<PersonRecord>(listings, 'person');
  const entries = [...index.byId.values()];
  return {
    listed: listings.length > 0,
    people: entries.map(({ record }) => record).sort((a, b) => (a.code < b.code ? -1 : 1)),
    index,
    problems: [...problems, ...checkCodes(entries), ...entries.flatMap(checkPerson)],
  };
}

/** A code that stands twice, or is the id records know somebody by: it would tell who it is. */
function checkCodes(entries: readonly Entry<PersonRecord>[]): Problem[] {
  const ids = new Map(entries.map(({ record: { id } }) => [id.toLowerCase(), id]));
  const first = new Map<string, string>();
  return entries.flatMap((entry) => {
    const { id, code } = entry.record;
    const folded = code.toLowerCase();
    const other = first.get(folded);
    first.set(folded, other ?? id);
    const hint = 'choose another code; capitals do not make codes differ';
    if (other !== undefined) {
      const message = `the code ${code} is that of ${other} already`;
      return [problemIn(entry, ['code'], { code: 'duplicate-code', message, hint })];
    }
    const owner = ids.get(folded);
    if (owner === undefined) return [];
    const message = `the code ${code} is the id of ${owner === id ? 'the same person' : 'somebody else'}, which is never printed`;
    return [problemIn(entry, ['code'], { code: 'code-is-id', message, hint })];
  });
}
