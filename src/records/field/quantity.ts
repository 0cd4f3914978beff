import type { z } from 'zod';
import { DIMENSIONS, type Dimension, fromSi, type Suffix } from '../../units.ts';
import { type AmountRule, amount } from './amount.ts';

/** What a field of a paired unit tells of itself: which key holds its SI twin. */
export interface UnitMeta {
  readonly title: string;
  readonly description?: string;
  readonly dimension: Dimension;
  readonly suffix: string;
  readonly siKey: string;
  readonly pair: string;
}

type Heading = { readonly title: string; readonly description?: string } & Partial<Pick<AmountRule, 'about' | 'trace'>>;
type Field = z.ZodOptional<ReturnType<typeof amount>>;
type Pair<D extends Dimension, S extends string> = { [K in Suffix<D> as `${S}_${K}`]: Field };

/**
 * The paired keys of one measure, for instance `mass_kg` and `mass_lb`. Bounds are given in SI.
 * At most one of a pair may be written; the record carries both what was written and the SI value.
 */
export const quantity =
  <D extends Dimension>(dimension: D) =>
  <S extends string>(
    stem: S,
    bounds: { min: number; max: number },
    { title, description, ...rule }: Heading,
  ): Pair<D, S> => {
    const { si, suffixes } = DIMENSIONS[dimension];
    const field = (suffix: string): Field => {
      const [min, max] = [fromSi(dimension, suffix, bounds.min), fromSi(dimension, suffix, bounds.max)].map(roundBound);
      const meta: UnitMeta = {
        title: `${title}, ${UNIT_WORDS[suffix] ?? suffix}`,
        ...(description && { description }),
        dimension,
        suffix,
        siKey: `${stem}_${si}`,
        pair: Object.keys(suffixes)
          .map((other) => `${stem}_${other}`)
          .join(' or '),
      };
      return amount({ min: min ?? bounds.min, max: max ?? bounds.max, ...rule })
        .meta({ ...meta })
        .optional();
    };
    return Object.fromEntries(Object.keys(suffixes).map((suffix) => [`${stem}_${suffix}`, field(suffix)])) as Pair<
      D,
      S
    >;
  };

const UNIT_WORDS: Readonly<Record<string, string>> = { m2: 'm²', ft2: 'ft²', c: '°C', f: '°F' };

const roundBound = (value: number): number => Math.round(value * 100) / 100;
