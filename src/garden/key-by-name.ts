import type { Keyed } from './keyed.ts';

/** Records with their keys: `<kind>/<slug>/<name>`, further ones of a name told apart by a number, in the order given. */
export function keyByName<T extends object>(
  kind: string,
  slug: string,
  named: readonly (readonly [string, T])[],
): Keyed<T>[] {
  const uses = new Map<string, number>();
  return named.map(([name, record]) => {
    const use = (uses.get(name) ?? 0) + 1;
    uses.set(name, use);
    return { ...record, key: `${kind}/${slug}/${name}${use > 1 ? ` ${use}` : ''}` };
  });
}
