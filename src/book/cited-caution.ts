import type { Format } from '../format.ts';
import type { CautionRecord } from '../records/caution.ts';
import type { Reference } from './chapter.ts';
import { sourceOf } from './source-of.ts';

/** A caution with the words of its sources, as pages print it. */
export interface CitedCaution extends CautionRecord {
  /** Whole citations, and what stands for them where there is little room. */
  readonly cites: readonly string[];
  readonly short_cites: readonly string[];
}

/** `{5 c}`, `{200 l}` and `{200 kg}` in the text of a caution are degrees, litres and kilograms, printed in the garden's units. */
const MEASURES = /\{(\d+) (c|l|kg)\}/g;

export function citedCaution(caution: CautionRecord, reference: Reference, format: Format): CitedCaution {
  const cited = caution.sources.map((id) => sourceOf(reference, id));
  return {
    ...caution,
    says: caution.says.replace(MEASURES, (_token, value: string, unit: 'c' | 'l' | 'kg') =>
      wholeMeasure(Number(value), unit, format),
    ),
    cites: cited.map(({ cite }) => cite),
    short_cites: cited.map(({ cite, short }) => short ?? cite),
  };
}

const wholeMeasure = (value: number, unit: 'c' | 'l' | 'kg', format: Format): string =>
  `${format.decimal(format.toPrint(value, unit), 0)}\u00a0${format.unitLabel(unit)}`;
