import { createHash } from 'node:crypto';
import type { Chart } from '../book/chart.ts';
import { type Kept, keptInMemory } from '../kept.ts';

/** Draws one chart to an SVG text; the same spec always gives the same bytes. */
export type Draw = (chart: Chart) => Promise<string>;

/** Makes the SVG of a spec whose parts are named by a key. */
export type Drawing = (spec: Chart['spec'], key: string) => Promise<string>;

/** Loads the drawing library, which takes longer than a chart, only when one has to be drawn. */
const withVega: Drawing = async (spec, key) => (await import('./chart-svg.ts')).drawSvg(spec, key);

/** A drawer that draws a spec once: what is kept of the same spec is taken, in memory alone unless `kept` reaches further. */
export function createDraw(kept: Kept = keptInMemory(), drawing: Drawing = withVega): Draw {
  return async ({ spec }) => {
    const text = JSON.stringify(spec);
    const before = kept.find('charts', text) as string | undefined;
    if (before !== undefined) return before;
    const svg = await drawing(spec, createHash('sha256').update(text).digest('hex').slice(0, 10));
    kept.keep('charts', text, svg);
    return svg;
  };
}
