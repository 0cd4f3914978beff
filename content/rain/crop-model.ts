import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import type { Figure, Interval } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Companion } from '../../src/ledger/rain-sugar/companion.ts';
import type { CropRain } from '../../src/ledger/rain-sugar/crop-rain.ts';
import type { RainEvidence } from '../../src/ledger/rain-sugar/evidence.ts';
import type { RainPairs } from '../../src/ledger/rain-sugar/pairs.ts';
import { rainChart } from './charts.ts';

export interface CropModel {
  readonly chart: Chart | null;
  readonly names: { readonly one: string; readonly many: string };
  readonly rain_days: number;
  readonly tongue_brix: number;
  readonly evidence: RainEvidence;
  /** Picked because rain was coming; not in the slope. */
  readonly apart: number;
  readonly companions: readonly Companion[];
  readonly slope: Figure;
  /** thins, sweetens: the range leaves out nothing; unclear: it holds nothing. Null without a slope. */
  readonly verdict: 'thins' | 'sweetens' | 'unclear' | null;
  /** Rain it takes to lose what a tongue can tell, by the slope, in mm; null unless rain thins. */
  readonly tongue_mm: number | null;
  /** The strongest thinning the range leaves open, a slope above zero; null without a slope. */
  readonly at_most: number | null;
  /** How much thinner for a mm of rain, both ends above or below zero as they come. */
  readonly thinner: Interval | null;
  readonly fit: {
    readonly df: number;
    readonly plain_df: number;
    readonly plain: Interval;
    readonly day_sd: number;
    readonly mound_sd: number;
    readonly fruit_sd: number;
    readonly covariates: readonly string[];
  } | null;
  readonly windows: readonly { readonly days: number; readonly slope: Figure; readonly thinner: Interval | null }[];
  readonly pairs: RainPairs;
  /** Pairs that differ. */
  readonly differing: number;
  readonly pairs_wanted: number;
  /** Enough of them to be told in the finding. */
  readonly pairs_tell: boolean;
  /** The slope as thinning, °Brix for a mm; null without a slope. */
  readonly thinning: number | null;
}

/** With fewer pairs even a split all one way comes by luck more than one time in twenty. */
const FEWEST_PAIRS = 6;

/** Everything the section of one crop reads. */
export function cropModel(facts: Facts, found: CropRain): CropModel {
  const { slope, fit, settings } = found;
  const { interval, value } = slope;
  return {
    chart: rainChart(facts, found),
    names: cropNames(found.crop, facts.garden.about.locale),
    rain_days: settings.rain_days,
    tongue_brix: settings.tongue_brix,
    evidence: found.evidence,
    apart: found.apart.length,
    companions: found.companions,
    slope,
    verdict: interval ? (interval.high < 0 ? 'thins' : interval.low > 0 ? 'sweetens' : 'unclear') : null,
    tongue_mm: interval && interval.high < 0 && value !== null ? settings.tongue_brix / -value : null,
    at_most: interval && interval.low < 0 ? -interval.low : null,
    thinner: turned(interval),
    fit: fit && {
      df: fit.df,
      plain_df: fit.plain_df,
      plain: turned(fit.plain_interval) ?? fit.plain_interval,
      day_sd: fit.day_sd_brix,
      mound_sd: fit.mound_sd_brix,
      fruit_sd: fit.fruit_sd_brix,
      covariates: fit.covariates,
    },
    windows: found.windows.map(({ days, slope: of }) => ({ days, slope: of, thinner: turned(of.interval) })),
    pairs: found.pairs,
    differing: found.pairs.less + found.pairs.sweeter,
    pairs_wanted: FEWEST_PAIRS,
    pairs_tell: found.pairs.less + found.pairs.sweeter >= FEWEST_PAIRS,
    thinning: value === null ? null : -value,
  };
}

/** A slope's range as thinning. */
const turned = (interval: Interval | null): Interval | null =>
  interval && { ...interval, low: -interval.high, high: -interval.low };
