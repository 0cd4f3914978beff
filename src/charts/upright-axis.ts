import type { ValueScale } from './value-axis.ts';

/** A title on top of a vertical axis, read without turning the head; `lift_px` above the plot. */
export const uprightTitle = (title: string, lift_px: number) => ({
  title,
  titleAngle: 0,
  titleAlign: 'left' as const,
  titleAnchor: 'end' as const,
  titleX: 8,
  titleY: -lift_px,
  titleBaseline: 'bottom' as const,
});

/** A vertical axis whose unit lies on top of it. */
export const uprightAxis = (field: string, { domain, values, labelExpr }: ValueScale, title: string) => ({
  field,
  type: 'quantitative' as const,
  scale: { domain: [...domain], nice: false, zero: false },
  axis: { values: [...values], labelExpr, ...uprightTitle(title, 4) },
});
