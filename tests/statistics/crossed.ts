/** Trials of treatments crossed with blocks and repeated in them, as observations. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { Observation } from '../../src/statistics/block-design.ts';

/** Of each treatment, the values of each block (numbered from 1). */
export function crossed(table: Readonly<Record<string, readonly (readonly number[])[]>>): Observation[] {
  return Object.entries(table).flatMap(([treatment, blocks]) =>
    blocks.flatMap((values, index) => values.map((value) => ({ treatment, block: `${index + 1}`, value }))),
  );
}

export interface BarleyPlot {
  readonly yield: number;
  readonly variety: string;
  readonly year: number;
  readonly site: string;
}

/**
 * 10 varieties of barley at 6 sites in 1931 and 1932, bushels an acre: Immer, Hayes & Powers 1934, Journal of the American
 * Society of Agronomy 26:403-419 (from memory), in vega-datasets 3.2.1, data/barley.json.
 */
const packed = dirname(createRequire(import.meta.url).resolve('vega-datasets'));
export const BARLEY_PLOTS: BarleyPlot[] = JSON.parse(readFileSync(join(packed, '../data/barley.json'), 'utf8'));

/** Varieties by site with the years as repeats, and by year with the sites as repeats. */
export const BARLEY = {
  site: BARLEY_PLOTS.map((plot) => ({ treatment: plot.variety, block: plot.site, value: plot.yield })),
  year: BARLEY_PLOTS.map((plot) => ({ treatment: plot.variety, block: `${plot.year}`, value: plot.yield })),
};
