import { because, type Figure, type Interval, type Reason, type Replicate } from '../figure.ts';
import type { Season, Variety } from '../garden/garden.ts';
import { type AdditiveFit, fitAdditive, type Refusal } from '../statistics/additive-model.ts';
import { cutAtZero, tInterval } from '../statistics/interval.ts';
import type { Bases } from './bases.ts';
import { type Measure, unitOf } from './measure.ts';
import { type LeftOut, type Mound, moundsOf } from './mounds.ts';

/** Below this many mounds a variety gets its single values and no range (house decision). */
export const FEWEST_MOUNDS = 3;
export const LEVEL = 0.9;

export interface VarietyMean {
  readonly variety: Variety;
  readonly mounds: readonly Mound[];
  readonly mean: Figure;
}

export interface Difference {
  readonly a: Variety;
  readonly b: Variety;
  /** a minus b. */
  readonly difference: Figure;
}

/** Varieties of one crop in one season by one measure per plant set. */
export interface Comparison {
  readonly measure: Measure;
  /** In the alphabet's order. */
  readonly means: readonly VarietyMean[];
  /** Every pair of varieties with enough mounds, unadjusted. */
  readonly differences: readonly Difference[];
  readonly left_out: readonly LeftOut[];
  /** How mounds are spoken of: mound, tub, row, bed, or spot when they are of several kinds. */
  readonly kind: string;
  readonly fit: AdditiveFit | null;
  readonly refusal: Refusal | null;
}

/** `stem` is the season's figure id stem, for instance `yield.2025`. */
export function compare(
  stem: string,
  season: Season,
  varieties: readonly Variety[],
  measure: Measure,
  bases: Bases,
): Comparison {
  const crop = varieties[0]?.crop.id ?? '';
  const { mounds, left_out } = moundsOf(season, crop, measure);
  const result = fitAdditive(mounds.map(({ variety, block, value }) => ({ treatment: variety, block, value })));
  const fit = 'cannot' in result ? null : result;
  const refusal = 'cannot' in result ? result.cannot : null;
  const kind = kindOf(mounds);
  const basis = bases.of(mounds.flatMap(({ keys }) => keys));
  const own = (variety: Variety): Mound[] => mounds.filter((mound) => mound.variety === variety.id);
  const figureOf = (
    id: string,
    method: string,
    replicate: Replicate,
    told: Pick<Figure, 'value' | 'interval' | 'reason'>,
  ): Figure => ({
    id: `${stem}.${id}.${measure}_per_plant`,
    unit: unitOf(measure, 'plant'),
    n: replicate.count,
    replicate,
    reach: 'another-spot-this-summer',
    method,
    source: null,
    basis,
    ...told,
  });
  const means = varieties.map((variety): VarietyMean => {
    const count = own(variety).length;
    const told = meanOf(fit, refusal, variety.id, count);
    const method = fit?.uses_blocks && !fit.complete ? 'adjusted-mean' : 'mound-mean';
    return { variety, mounds: own(variety), mean: figureOf(`variety.${variety.id}`, method, { kind, count }, told) };
  });
  const enough = means.filter(({ mounds: { length } }) => length >= FEWEST_MOUNDS).map(({ variety }) => variety);
  const pairs = fit ? enough.flatMap((a, index) => enough.slice(index + 1).map((b) => [a, b] as const)) : [];
  const differences = pairs.map(([a, b]): Difference => {
    const { estimate, se } = (fit as AdditiveFit).difference(a.id, b.id);
    const told = { value: estimate, interval: tInterval(estimate, se, (fit as AdditiveFit).df, LEVEL), reason: null };
    const replicate = { kind, count: own(a).length + own(b).length };
    return { a, b, difference: figureOf(`difference.${a.id}.${b.id}`, 'difference', replicate, told) };
  });
  return { measure, means, differences, left_out, kind, fit, refusal };
}

interface Told {
  readonly value: number | null;
  readonly interval: Interval | null;
  readonly reason: Reason | null;
}

function meanOf(fit: AdditiveFit | null, refusal: Refusal | null, variety: string, count: number): Told {
  const cannot = (reason: Reason): Told => ({ value: null, interval: null, reason });
  if (count === 0) return cannot(because('no-mounds'));
  if (count < FEWEST_MOUNDS) return cannot(because('few-mounds', { count, wanted: FEWEST_MOUNDS }));
  if (!fit) return cannot(because(refusal?.code ?? 'no-values'));
  const { estimate, se } = fit.mean(variety);
  return { value: estimate, interval: cutAtZero(tInterval(estimate, se, fit.df, LEVEL)), reason: null };
}

function kindOf(mounds: readonly Mound[]): string {
  const kinds = new Set(mounds.map(({ planting }) => planting.spot.kind));
  const [only] = kinds;
  return kinds.size === 1 && only ? only : 'spot';
}
