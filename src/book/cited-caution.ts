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

/** `{5 c}` in the text of a caution is that many degrees, printed in the garden's units. */
const DEGREES = /\{(\d+) c\}/g;

export function citedCaution(caution: CautionRecord, reference: Reference, format: Format): CitedCaution {
  const cited = caution.sources.map((id) => sourceOf(reference, id));
  return {
    ...caution,
    says: caution.says.replace(DEGREES, (_token, degrees: string) => wholeDegrees(Number(degrees), format)),
    cites: cited.map(({ cite }) => cite),
    short_cites: cited.map(({ cite, short }) => short ?? cite),
  };
}

const wholeDegrees = (degrees: number, format: Format): string =>
  `${format.decimal(format.toPrint(degrees, 'c'), 0)}\u00a0${format.unitLabel('c')}`;
