import { INK } from './theme.ts';

/** Words beside a chart, at the height of what they name. */
export interface EndLabel {
  readonly lines: readonly string[];
  /** Where their middle would stand, pixels from above. */
  readonly middle_px: number;
}

const LINE_PX = 14;
const GAP_PX = 2;
/** Above the plot there is room for half a line and a little. */
const HIGHEST_PX = 8;

/** From above to below, none over another: the lower keeps its place, and the upper gives way until it meets the top. */
export function keptApart(labels: readonly EndLabel[]): EndLabel[] {
  const half = ({ lines }: EndLabel): number => (lines.length * LINE_PX + GAP_PX) / 2;
  const sorted = [...labels].sort((a, b) => a.middle_px - b.middle_px);
  let foot = Number.POSITIVE_INFINITY;
  const raised = sorted.toReversed().map((label) => {
    const middle_px = Math.min(label.middle_px, foot - half(label));
    foot = middle_px - half(label);
    return { ...label, middle_px };
  });
  let head = -HIGHEST_PX;
  return raised.toReversed().map((label) => {
    const middle_px = Math.max(label.middle_px, head + half(label));
    head = middle_px + half(label);
    return { ...label, middle_px };
  });
}

/** A layer a label, to the right of a plot of this width. */
export const endLabelParts = (labels: readonly EndLabel[], width_px: number): object[] =>
  keptApart(labels).map(({ lines, middle_px }) => ({
    data: { values: [{}] },
    mark: {
      type: 'text',
      text: [...lines],
      x: width_px + 7,
      y: middle_px - ((lines.length - 1) * LINE_PX) / 2,
      align: 'left',
      baseline: 'middle',
      lineHeight: LINE_PX,
      color: INK,
    },
  }));
