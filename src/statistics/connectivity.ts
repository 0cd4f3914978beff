/** What can be compared with what: things are joined when they were set side by side, or both with a third. */

/**
 * The connected components. Each edge lists things that were together: the two of a pair, the varieties of one season,
 * or a variety and a place it grew in. Sorted by code unit within a component, components by their first member; in
 * any order of the edges the same. An edge of one thing names it without joining it to another.
 */
export function components(edges: readonly (readonly string[])[]): string[][] {
  const root = new Map<string, string>();
  const find = (thing: string): string => {
    let at = thing;
    for (let up = root.get(at) ?? at; up !== at; up = root.get(at) ?? at) at = up;
    root.set(thing, at);
    return at;
  };
  for (const edge of edges) {
    const [first, ...others] = edge.map(find);
    for (const other of others) root.set(other, first ?? other);
  }
  const members = new Map<string, string[]>();
  for (const thing of [...root.keys()].sort()) {
    const own = members.get(find(thing));
    if (own) own.push(thing);
    else members.set(find(thing), [thing]);
  }
  return [...members.values()];
}

/** Whether two things stand in one component. False for a thing that is in none. */
export const areJoined = (found: readonly (readonly string[])[], a: string, b: string): boolean =>
  found.some((component) => component.includes(a) && component.includes(b));
