import type { Dated } from '../../src/dated.ts';
import type { Season } from '../../src/garden/garden.ts';
import type { Look, Trouble } from './look.ts';
import { whereOf } from './where.ts';

/** One kind of trouble over a season. */
export interface FoundLine {
  readonly found: Trouble;
  /** Its keeper's own words, each once. */
  readonly what: readonly string[];
  readonly looks: number;
  readonly first: Dated;
  readonly last: Dated;
  /** Null: the whole plot. */
  readonly where: string | null;
  /** Null where nobody graded it. */
  readonly worst: { readonly severity: number; readonly on: Dated } | null;
  /** The look with most of its plants affected; null where nobody counted. */
  readonly most: { readonly affected: number; readonly checked: number | null } | null;
}

/** Every kind that was found, the one that came first first. */
export function foundLines(season: Season): FoundLine[] {
  const seen = new Map<Trouble, Look[]>();
  for (const look of season.events.scouting)
    if (look.found !== 'none') seen.set(look.found, [...(seen.get(look.found) ?? []), look]);
  return [...seen].flatMap(([found, looks]) => {
    const [first, last] = [looks[0], looks.at(-1)];
    return first && last ? [lineOf(season, found, looks, first, last)] : [];
  });
}

function lineOf(season: Season, found: Trouble, looks: readonly Look[], first: Look, last: Look): FoundLine {
  const everywhere = looks.some(({ spots }) => spots === null);
  return {
    found,
    what: [...new Set(looks.flatMap(({ what }) => what ?? []))],
    looks: looks.length,
    first: first.looked_on,
    last: last.looked_on,
    where: everywhere ? null : whereOf(season, [...new Set(looks.flatMap(({ spots }) => spots ?? []))]),
    worst: largest(looks, ({ severity, looked_on: on }) => severity !== null && { severity, on }, 'severity'),
    most: largest(looks, ({ affected, checked }) => affected !== null && { affected, checked }, 'affected'),
  };
}

/** What is told of the look with the largest number, the earliest of equals; null where no look tells. */
function largest<Key extends string, Told extends Readonly<Record<Key, number>>>(
  looks: readonly Look[],
  tell: (look: Look) => Told | false,
  key: Key,
): Told | null {
  const told = looks.map(tell).filter((one): one is Told => one !== false);
  return told.reduce<Told | null>((most, one) => (most === null || one[key] > most[key] ? one : most), null);
}
