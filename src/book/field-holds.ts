import type { z } from 'zod';
import type { AmountMeta } from '../records/field/amount.ts';
import type { UnitMeta } from '../records/field/quantity.ts';
import { metaOf } from '../records/field/record.ts';
import type { Holds } from './table.ts';

type Meta = Partial<AmountMeta & UnitMeta> & { readonly format?: string; readonly words?: readonly string[] };

const DATED =
  'A day (2025-08-12), about a day (about 2025-08-12), a span (2025-08-10..2025-08-14), a month (2025-08), or unknown.';

/** Any text, and nothing more to say of it. */
export const TEXT: Holds = {
  type: 'string',
  description: null,
  required: false,
  words: null,
  minimum: null,
  maximum: null,
  unit: null,
};

/** What a record's field holds once it is published, as its schema tells. */
export function holdsOf(field: z.core.$ZodType, required: boolean): Holds {
  const meta: Meta = metaOf(field) ?? {};
  const type = typeOf(meta);
  const description = [meta.description, meta.format === 'dated' ? DATED : null].filter(Boolean).join(' ');
  return {
    type,
    description: description || null,
    required,
    words: type === 'string' ? (meta.words ?? null) : null,
    ...boundsOf(meta),
    unit: meta.suffix ?? null,
  };
}

/** Whether a field's number may be entered as "about" or as a trace. */
export function mayBeReckoned(field: z.core.$ZodType): boolean {
  const { number }: Meta = metaOf(field) ?? {};
  return number !== undefined && (number.about !== false || number.trace === true);
}

function typeOf({ number, format }: Meta): Holds['type'] {
  if (number) return number.whole ? 'integer' : 'number';
  if (format === 'date') return 'date';
  return format === 'yes-no' ? 'boolean' : 'string';
}

/** A number converted to SI may pass a rounded bound by its last digit; nought stays nought in every unit but degrees. */
function boundsOf({ number, suffix, siKey, dimension }: Meta): Pick<Holds, 'minimum' | 'maximum'> {
  if (!number) return { minimum: null, maximum: null };
  const isSi = suffix !== undefined && siKey?.endsWith(`_${suffix}`) === true;
  if (!isSi) return { minimum: number.min, maximum: number.max };
  return { minimum: number.min === 0 && dimension !== 'temperature' ? 0 : null, maximum: null };
}
