import type { Folios } from './contents-folios.ts';
import type { Places } from './pdf-places.ts';

/** A chapter as the leaves have it: name of its section and the words of its title. */
export interface Opening {
  readonly name: string;
  readonly title: string;
}

/**
 * Numbers and empty pages for the next printing, from the places of this one.
 * `blankBefore` is what this printing had; with `onTheRight` every opening gets an odd page.
 * Throws Error when the outline does not hold the openings in order.
 */
export function foliosFrom(
  places: Places,
  openings: readonly Opening[],
  blankBefore: ReadonlySet<string>,
  onTheRight: boolean,
): Folios {
  const starts = startsOf(places, openings);
  const wanted = new Set<string>();
  const shifts: { readonly from: number; readonly by: number }[] = [];
  let [had, has] = [0, 0];
  for (const [index, { name }] of openings.entries()) {
    const start = starts[index] ?? 0;
    if (blankBefore.has(name)) had += 1;
    if (onTheRight && (start - had + has) % 2 === 0) {
      wanted.add(name);
      has += 1;
    }
    shifts.push({ from: start, by: has - had });
  }
  const moved = (page: number): number => page + (shifts.findLast(({ from }) => from <= page)?.by ?? 0);
  return { numbers: new Map([...places.goals].map(([name, page]) => [name, moved(page)])), blankBefore: wanted };
}

function startsOf({ outline }: Places, openings: readonly Opening[]): number[] {
  const found = outline.map(({ title }) => title);
  const expected = openings.map(({ title }) => title);
  if (found.join('\n') !== expected.join('\n'))
    throw new Error(`invalid outline: it holds "${found.join('", "')}" and not "${expected.join('", "')}"`);
  return outline.map(({ page }) => page);
}

/** True when a printing has what it was told: the number of each goal, and the empty pages. */
export const isSettled = (told: Folios, next: Folios, goals: readonly string[]): boolean =>
  goals.every((goal) => told.numbers.has(goal) && told.numbers.get(goal) === next.numbers.get(goal)) &&
  [...told.blankBefore].sort().join() === [...next.blankBefore].sort().join();
