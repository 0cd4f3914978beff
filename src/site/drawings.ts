import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

const NAME = /^[a-z][a-z-]*$/;

/** A drawing of the folder by its name, as SVG for a page that says in words what it shows; empty where there is none. */
export type Drawings = (name: string) => string;

export function createDrawings(folder: string): Drawings {
  // The site generator changes the working folder while it renders.
  const home = resolve(folder);
  const read = new Map<string, string>();
  return (name) => {
    const known = read.get(name);
    if (known !== undefined) return known;
    const file = join(home, `${name}.svg`);
    // A garden's own crop may name a drawing that nobody has made yet.
    const svg = NAME.test(name) && existsSync(file) ? readFileSync(file, 'utf8').trim() : '';
    const hidden = svg.replace('<svg ', '<svg class="drawing-of" aria-hidden="true" focusable="false" ');
    read.set(name, hidden);
    return hidden;
  };
}
