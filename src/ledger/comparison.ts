import { because, type Figure, type Interval, type Reason } from '../figure.ts';
import type { Variety } from '../garden/garden.ts';
import { sharedKind } from '../garden/shared-kind.ts';
import { type AdditiveFit, fitAdditive, type Refusal } from '../statistics/additive-model.ts';
import { cutAtZero, tInterval } from '../statistics/interval.ts';
import { type Measure, unitOf } from './measure.ts';
import { type LeftOut, type Mound, moundsOf } from './mounds.ts';
import type { SeasonAccount } from './season-account.ts';

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

/** Compares the varieties of one crop. */
export function compare(account: SeasonAccount, varieties: readonly Variety[], measure: Measure): Comparison {
  const { mounds, left_out } = moundsOf(account, varieties[0]?.crop.id ?? '', measure);
  const result = fitAdditive(mounds.map(({ variety, block, value }) => ({ treatment: variety, block, value })));
  const fit = 'cannot' in result ? null : result;
  const refusal = 'cannot' in result ? result.cannot : null;
  const trial: Trial = {
    stem: account.stem,
    measure,
    kind: sharedKind(mounds.map(({ planting }) => planting)),
    basis: account.bases.of(mounds.flatMap(({ keys }) => keys)),
    fit,
    refusal,
  };
  const means = varieties.map((variety) => varietyMean(trial, variety, mounds));
  const enough = means.filter((mean) => mean.mounds.length >= FEWEST_MOUNDS);
  const differences = enough.flatMap((a, index) =>
    enough.slice(index + 1).flatMap((b) => difference(trial, a, b) ?? []),
  );
  return { measure, means, differences, left_out, kind: trial.kind, fit, refusal };
}

/** What all figures of one comparison share. */
interface Trial {
  readonly stem: string;
  readonly measure: Measure;
  readonly kind: string;
  readonly basis: string;
  readonly fit: AdditiveFit | null;
  readonly refusal: Refusal | null;
}

function varietyMean(trial: Trial, variety: Variety, all: readonly Mound[]): VarietyMean {
  const mounds = all.filter((mound) => mound.variety === variety.id);
  const method = trial.fit?.uses_blocks && !trial.fit.complete ? 'adjusted-mean' : 'mound-mean';
  const told = meanOf(trial, variety.id, mounds.length);
  return { variety, mounds, mean: estimateFigure(trial, `variety.${variety.id}`, method, mounds.length, told) };
}

/** Null when nothing could be fitted. */
function difference(trial: Trial, a: VarietyMean, b: VarietyMean): Difference | null {
  if (!trial.fit) return null;
  const { estimate, se } = trial.fit.difference(a.variety.id, b.variety.id);
  const told = { value: estimate, interval: tInterval(estimate, se, trial.fit.df, LEVEL), reason: null };
  const id = `difference.${a.variety.id}.${b.variety.id}`;
  const figure = estimateFigure(trial, id, 'difference', a.mounds.length + b.mounds.length, told);
  return { a: a.variety, b: b.variety, difference: figure };
}

function estimateFigure(
  { stem, measure, kind, basis }: Trial,
  id: string,
  method: string,
  count: number,
  told: Told,
): Figure {
  return {
    id: `${stem}.${id}.${measure}_per_plant`,
    value: told.value,
    unit: unitOf(measure, 'plant'),
    interval: told.interval,
    n: count,
    replicate: { kind, count },
    reach: 'another-spot-this-summer',
    method,
    source: method === 'adjusted-mean' ? 'searle-1980' : 'cochran-cox',
    basis,
    reason: told.reason,
  };
}

interface Told {
  readonly value: number | null;
  readonly interval: Interval | null;
  readonly reason: Reason | null;
}

function meanOf({ fit, refusal }: Trial, variety: string, count: number): Told {
  const cannot = (reason: Reason): Told => ({ value: null, interval: null, reason });
  if (count === 0) return cannot(because('no-mounds'));
  if (count < FEWEST_MOUNDS) return cannot(because('few-mounds', { count, wanted: FEWEST_MOUNDS }));
  if (!fit) return cannot(because(refusal?.code ?? 'no-values'));
  const { estimate, se } = fit.mean(variety);
  return { value: estimate, interval: cutAtZero(tInterval(estimate, se, fit.df, LEVEL)), reason: null };
}
