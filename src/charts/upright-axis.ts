import type { ValueScale } from './value-axis.ts';

/** A vertical axis whose unit lies on top of it, read without turning the head. */
export const uprightAxis = (field: string, { domain, values, labelExpr }: ValueScale, title: string) => ({
  field,
  type: 'quantitative' as const,
  scale: { domain: [...domain], nice: false, zero: false },
  axis: {
    values: [...values],
    labelExpr,
    title,
    titleAngle: 0,
    titleAlign: 'left' as const,
    titleAnchor: 'end' as const,
    titleX: 8,
    titleY: -4,
    titleBaseline: 'bottom' as const,
  },
});
