import { createHash } from 'node:crypto';
import * as vega from 'vega';
import { compile } from 'vega-lite';
import type { Chart } from '../book/chart.ts';

/** Draws one chart to an SVG text; the same spec always gives the same bytes. */
export type Draw = (chart: Chart) => Promise<string>;

/** A drawer that keeps what it has drawn, by the content of the spec. */
export function createDraw(): Draw {
  const drawn = new Map<string, string>();
  return async ({ spec }) => {
    const key = createHash('sha256').update(JSON.stringify(spec)).digest('hex').slice(0, 10);
    const svg = drawn.get(key) ?? tidy(await toSvg(spec), key);
    drawn.set(key, svg);
    return svg;
  };
}

async function toSvg(spec: Chart['spec']): Promise<string> {
  const compiled = compile(spec, { logger: vega.logger(vega.Error) as never });
  const view = new vega.View(vega.parse(compiled.spec), {
    renderer: 'none',
    loader: closedLoader(),
    logLevel: vega.Error,
  });
  vega.resetSVGDefIds();
  const svg = await view.toSVG();
  view.finalize();
  return svg;
}

/** Charts carry their data; one that asks for a file or an address is a fault. */
function closedLoader(): vega.Loader {
  const refuse = (uri: string): never => {
    throw new Error(`invalid chart: it asks for ${uri}`);
  };
  return { load: refuse, sanitize: refuse, http: refuse, file: refuse } as unknown as vega.Loader;
}

/** Coordinates to a hundredth, ids of its own, and no roles: the figure around it carries its words. */
function tidy(svg: string, key: string): string {
  return svg
    .replace(/-?\d+\.\d{3,}/g, (number) => String(Math.round(Number(number) * 100) / 100))
    .replace(/\b(id="|url\(#|href="#)([a-z]+\d+)/g, `$1c${key}-$2`)
    .replace(/ (?:role|aria-[a-z]+)="[^"]*"/g, '')
    .replace('<svg ', '<svg aria-hidden="true" focusable="false" ');
}
