import { z } from 'zod';
import { toSi } from '../../units.ts';
import type { Amount } from './amount.ts';
import type { UnitMeta } from './quantity.ts';

/** How an amount was written, when it was not a plain number: `{count: 'about', rain_mm: 'trace'}`. */
export type Entered = Readonly<Record<string, 'about' | 'trace'>>;

type Plain<V> = V extends Amount ? number : V;
type Filled<T> = { [K in keyof T]-?: undefined extends T[K] ? Plain<Exclude<T[K], undefined>> | null : Plain<T[K]> };
export type Recorded<T> = Readonly<Filled<T> & { entered: Entered }>;

/**
 * One record: unknown keys refused, absent fields null, amounts as numbers, and for each pair of units
 * the SI key filled from whichever was written. Two units of one pair are refused.
 */
export function record<Shape extends z.ZodRawShape>(shape: Shape) {
  const pairs = unitFields(shape);
  return z
    .strictObject(shape)
    .check(z.superRefine((value, context) => refuseTwoUnits(value, pairs, context), { when: () => true }))
    .transform((value): Recorded<z.output<z.ZodObject<Shape>>> => fill(shape, value, pairs) as never);
}

function unitFields(shape: z.ZodRawShape): Map<string, UnitMeta> {
  const fields = new Map<string, UnitMeta>();
  for (const [key, field] of Object.entries(shape)) {
    const meta = metaOf(field);
    if (meta && 'siKey' in meta) fields.set(key, meta as unknown as UnitMeta);
  }
  return fields;
}

/** The metadata of a field, optional or not. */
export function metaOf(field: z.core.$ZodType): Record<string, unknown> | undefined {
  const inner = field instanceof z.ZodOptional ? field.unwrap() : field;
  return z.globalRegistry.get(inner) ?? z.globalRegistry.get(field);
}

function refuseTwoUnits(value: unknown, pairs: Map<string, UnitMeta>, context: z.core.$RefinementCtx): void {
  if (typeof value !== 'object' || value === null) return;
  const seen = new Map<string, string>();
  for (const key of Object.keys(value)) {
    const siKey = pairs.get(key)?.siKey;
    if (!siKey) continue;
    const other = seen.get(siKey);
    if (other) {
      context.addIssue({
        code: 'custom',
        path: [key],
        message: `${other} and ${key} are the same measure in two units`,
        params: { code: 'two-units', hint: `keep the one you read, delete the other; the book converts` },
      });
    }
    seen.set(siKey, key);
  }
}

function fill(
  shape: z.ZodRawShape,
  value: Record<string, unknown>,
  pairs: Map<string, UnitMeta>,
): Record<string, unknown> {
  const filled: Record<string, unknown> = {};
  const entered: Record<string, 'about' | 'trace'> = {};
  for (const key of Object.keys(shape)) {
    const written = value[key] ?? null;
    filled[key] = isAmount(written) ? written.value : written;
    if (isAmount(written) && written.entered !== 'exact') entered[pairs.get(key)?.siKey ?? key] = written.entered;
  }
  for (const [key, { dimension, suffix, siKey }] of pairs) {
    const written = filled[key];
    if (key !== siKey && typeof written === 'number') filled[siKey] = toSi(dimension, suffix, written);
  }
  return { ...filled, entered };
}

const isAmount = (value: unknown): value is Amount =>
  typeof value === 'object' && value !== null && 'entered' in value && 'value' in value;
