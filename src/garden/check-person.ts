import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { PersonRecord } from '../records/person.ts';

/** What is impossible or unwise about one person's lines. */
export const checkPerson = (entry: Entry<PersonRecord>): Problem[] => [...withdrawnFirst(entry), ...tellingCode(entry)];

function withdrawnFirst(entry: Entry<PersonRecord>): Problem[] {
  const { agreed_on, withdrawn_on } = entry.record;
  if (agreed_on === null || withdrawn_on === null || withdrawn_on >= agreed_on) return [];
  const complaint = {
    code: 'withdrawn-before-agreed',
    message: `withdrawn ${withdrawn_on}, before it was agreed ${agreed_on}`,
    hint: 'correct the dates; for somebody who agreed once more, take withdrawn_on away',
  };
  return [problemIn(entry, ['withdrawn_on'], complaint)];
}

/** A warning for a code anybody could read: the first letters of the name, or one of its words. */
function tellingCode(entry: Entry<PersonRecord>): Problem[] {
  const { code, name } = entry.record;
  const words = name.toLowerCase().split(/[^\p{L}\p{N}]+/u);
  const initials = words.map((word) => word.charAt(0)).join('');
  if (
    !code
      .toLowerCase()
      .split('-')
      .some((part) => part === initials || words.includes(part))
  )
    return [];
  const complaint = {
    severity: 'warning',
    code: 'code-tells-name',
    message: `the code ${code} tells whose it is`,
    hint: 'choose one that has nothing of the name: K4, plum-2',
  } as const;
  return [problemIn(entry, ['code'], complaint)];
}
