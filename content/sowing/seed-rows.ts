import type { SeedLine } from './seed-lines.ts';

/** A row of the printed table: a lot, or all untested varieties of which the same is to be said. */
export interface SeedTableRow extends Omit<SeedLine, 'variety'> {
  readonly varieties: readonly string[];
}

/** Varieties of which nothing can be said are left out. */
export function seedRows(lines: readonly SeedLine[]): SeedTableRow[] {
  const groups = new Map<string, SeedLine[]>();
  for (const line of lines.filter(({ seeds }) => seeds.some(({ figure }) => figure.value !== null))) {
    const alike = line.lot ?? `untested ${line.seeds.map(({ figure }) => figure.value).join(' ')}`;
    groups.set(alike, [...(groups.get(alike) ?? []), line]);
  }
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    return first ? [{ ...first, varieties: group.map(({ variety }) => variety) }] : [];
  });
}
