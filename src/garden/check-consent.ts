import type { Listing } from '../reading/garden-records.ts';
import { KINDS } from '../reading/kinds.ts';
import { fileProblem, type Problem } from '../reading/problem.ts';
import { shapeAt } from '../reading/schema-keys.ts';
import { problemIn } from '../reading/source.ts';
import { metaOf } from '../records/field/record.ts';
import { mayBeNamed } from './consent.ts';
import type { Person } from './garden.ts';
import { lookUp } from './index-by-id.ts';
import { type Leaf, leavesOf } from './leaves.ts';
import type { People } from './link-people.ts';
import { nameFinder } from './name-finder.ts';

/** Records by somebody nobody listed, and published texts that name somebody who has not agreed. */
export function checkConsent(listings: readonly Listing[], people: People): Problem[] {
  if (!people.listed) return [];
  return [...unlisted(listings, people), ...namedUnasked(listings, people.people)];
}

/** A warning for each unknown writer, where their first record stands. */
function unlisted(listings: readonly Listing[], { index }: People): Problem[] {
  const written = new Map<string, Leaf[]>();
  const leaves = listings.flatMap(({ entries }) => entries.flatMap(leavesOf));
  for (const leaf of leaves.filter(({ field }) => field.at(-1) === 'by')) {
    const by = leaf.text.trim();
    written.set(by, [...(written.get(by) ?? []), leaf]);
  }
  return [...written].flatMap(([by, [first, ...more]]) => {
    const problem = first && lookUp(index, by, first.entry, first.field, 'person').problem;
    if (!problem) return [];
    const times = more.length === 0 ? '' : `, here and ${more.length} more times`;
    const message = `"${by}" is nobody of people.yaml${times}; who wrote it is not published`;
    return [{ ...problem, severity: 'warning', code: 'by-unlisted', message }];
  });
}

/** An error wherever a text the book prints or gives away holds the name of somebody who may not be named. */
function namedUnasked(listings: readonly Listing[], people: readonly Person[]): Problem[] {
  const find = nameFinder(people.filter((person) => !mayBeNamed(person)).map(({ name }) => name));
  return listings.flatMap((listing) => {
    const inFileName = listing.kind === 'weather' && find(listing.part);
    return [
      ...(inFileName ? [fileProblem(listing.file, unasked(inFileName))] : []),
      ...publishedLeaves(listing).flatMap(({ entry, field, text }) => {
        const name = find(text);
        return name && !isClosed(listing, { entry, field, text }) ? [problemIn(entry, field, unasked(name))] : [];
      }),
    ];
  });
}

const unasked = (name: string) => ({
  code: 'name-not-agreed',
  message: `"${name}" would be printed here, and people.yaml has no agreement that stands`,
  hint: 'take the name out, or ask its owner and write agreed_on',
});

/** Who wrote a record is replaced and notes stay in the garden, but for a variety's, which its page prints. */
function publishedLeaves({ kind, entries }: Listing): Leaf[] {
  const secret = kind === 'varieties' ? ['by'] : ['by', 'note'];
  return entries.flatMap((entry) =>
    leavesOf(entry).filter(({ field }) => {
      const key = String(field.at(-1));
      if (kind === 'people') return key === 'code' || (key === 'name' && mayBeNamed(entry.record as Person));
      return !secret.includes(key);
    }),
  );
}

/** Whether a field takes the words of a short list only: such a word is nobody's name. */
function isClosed({ kind }: Listing, { field }: Leaf): boolean {
  const known = shapeAt(KINDS[kind].schema, field.slice(0, -1))[String(field.at(-1))];
  return known !== undefined && metaOf(known)?.words !== undefined;
}
