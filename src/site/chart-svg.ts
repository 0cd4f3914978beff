import * as vega from 'vega';
import { compile } from 'vega-lite';
import type { Chart } from '../book/chart.ts';

/** Draws a spec with its data inside to an SVG text whose ids begin with the key. Throws Error for data to be fetched. */
export const drawSvg = async (spec: Chart['spec'], key: string): Promise<string> => tidy(await toSvg(spec), key);

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
