import type { Config } from 'vega-lite';

/** The book's colours. Meaning never rests on one of them alone. */
export const INK = '#1e2622';
export const GREY = '#6d726c';
export const RIND = '#2c5a3c';
export const STRAW = '#a98246';
/** Rain and watering only. */
export const WATER = '#3a6ea5';

/** Width of the text column, 122 mm at 96 dots an inch. */
export const COLUMN_PX = 461;

/** A bare family name ending in a digit falls back to another face in SVG: it has to be quoted. */
const FONT = "'Source Sans 3', 'Source Sans Pro', sans-serif";
const LABEL_PX = 12.5;

/** No grid, no frame, thin ink axes; labels at the caption's size. */
export const theme: Config = {
  font: FONT,
  background: 'transparent',
  view: { stroke: null },
  axis: {
    grid: false,
    domainColor: INK,
    domainWidth: 0.75,
    tickColor: INK,
    tickWidth: 0.75,
    tickSize: 4,
    labelColor: INK,
    labelFontSize: LABEL_PX,
    titleColor: GREY,
    titleFontSize: LABEL_PX,
    titleFontWeight: 'normal',
  },
  text: { fontSize: LABEL_PX, color: INK },
};
