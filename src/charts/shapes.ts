/** Shapes of marks told apart in black and white, the plainest first; a ninth kind takes the first again. */
const SHAPES = [
  'circle',
  'triangle-up',
  'square',
  'diamond',
  'cross',
  'triangle-down',
  'triangle-right',
  'triangle-left',
];

/** A shape for each name, in their order. */
export const shapeScale = (names: readonly string[]) => ({
  domain: [...names],
  range: names.map((_, index) => SHAPES[index % SHAPES.length]),
});
