import { because, type Interval, type Reason } from '../../figure.ts';
import { tInterval } from '../../statistics/interval.ts';
import { fitMixed } from '../../statistics/mixed-model/fit-mixed.ts';
import { kenwardRoger } from '../../statistics/mixed-model/kenward-roger.ts';
import { cellOf } from './cells.ts';
import type { SugarReading } from './reading.ts';

export const LEVEL = 0.9;
/** A covariate enters when at least this share of the fruits has it; the others take the mean of the rest. */
const MOSTLY_KNOWN = 0.9;

const FEWEST_DF = 1;

export interface RainSlope {
  /** °Brix per mm of rain in the window; below zero where rain thins. */
  readonly estimate: number;
  readonly se: number;
  readonly df: number;
  readonly interval: Interval;
  /** The same with picking days − seasons − 1 degrees of freedom. */
  readonly plain_df: number;
  readonly plain_interval: Interval;
  readonly day_sd_brix: number;
  readonly mound_sd_brix: number;
  readonly fruit_sd_brix: number;
  /** Covariates that entered. */
  readonly covariates: readonly string[];
  /** In the readings' order: sugar less all but the rain and a common mean. */
  readonly partial_brix: readonly number[];
  /** The same of fruits that stand apart, covariates left in; null where none of their variety and season was fitted. */
  readonly apart_brix: readonly (number | null)[];
}

interface Column {
  readonly name: string;
  readonly values: readonly number[];
}

/**
 * Slope of sugar on rain within variety and season, mound and picking day random, by restricted maximum likelihood with
 * the degrees of freedom of Kenward & Roger; or why there is none. Fruits that stand apart take no part in the fit.
 */
export function rainSlope(
  readings: readonly SugarReading[],
  apart: readonly SugarReading[] = [],
): RainSlope | { readonly cannot: Reason } {
  const y = readings.map(({ brix }) => brix);
  const rain: Column = { name: 'rain_mm', values: readings.map(({ rain_mm }) => rain_mm) };
  const cells = cellColumns(readings);
  const covariates = [
    known(
      'days_since_set',
      readings.map(({ days_since_set }) => days_since_set),
    ),
    known(
      'mass_kg',
      readings.map(({ mass_kg }) => mass_kg),
    ),
    known('picking_order', pickingOrder(readings)),
  ].flatMap((column) => column ?? []);
  const random = [
    { name: 'picking day', levels: readings.map(({ picked_on }) => picked_on) },
    { name: 'mound', levels: readings.map(({ mound }) => mound) },
  ];
  const fit = fitMixed({ y, fixed: [...cells, rain, ...covariates], random });
  if ('cannot' in fit) return { cannot: because(`fit-${fit.cannot.code}`) };
  const { estimate, se, df } = kenwardRoger(fit, { rain_mm: 1 });
  // Below one degree of freedom a range would span everything, and its quantile leaves the numbers there are.
  if (!(df >= FEWEST_DF)) return { cannot: because('few-df', { df }) };
  const days = new Set(readings.map(({ picked_on }) => picked_on)).size;
  const seasons = new Set(readings.map(({ season }) => season)).size;
  const plain_df = days - seasons - 1;
  const sd = (name: string): number => Math.sqrt(fit.components.find((one) => one.name === name)?.variance ?? 0);
  const mean = y.reduce((sum, value) => sum + value, 0) / y.length;
  const meanRain = rain.values.reduce((sum, value) => sum + value, 0) / y.length;
  const coefficients = new Map(fit.coefficients.map(({ name, estimate: of }) => [name, of]));
  const fitted = readings.map((_, row) =>
    [...cells, rain, ...covariates].reduce(
      (sum, { name, values }) => sum + (coefficients.get(name) ?? 0) * (values[row] ?? 0),
      0,
    ),
  );
  return {
    estimate,
    se,
    df,
    interval: tInterval(estimate, se, df, LEVEL),
    plain_df,
    plain_interval: tInterval(estimate, se, plain_df, LEVEL),
    day_sd_brix: sd('picking day'),
    mound_sd_brix: sd('mound'),
    fruit_sd_brix: Math.sqrt(fit.residual_variance),
    covariates: covariates.map(({ name }) => name),
    partial_brix: y.map(
      (value, row) => value - (fitted[row] ?? 0) + mean + estimate * ((rain.values[row] ?? 0) - meanRain),
    ),
    apart_brix: apart.map((one) => {
      const cell = coefficients.get(cellOf(one));
      return cell === undefined ? null : one.brix - cell + mean - estimate * meanRain;
    }),
  };
}

/** One indicator for each variety in each season. */
function cellColumns(readings: readonly SugarReading[]): Column[] {
  return [...new Set(readings.map(cellOf))]
    .sort()
    .map((cell) => ({ name: cell, values: readings.map((one) => (cellOf(one) === cell ? 1 : 0)) }));
}

/** Centred; null when too few have it or it does not vary. */
function known(name: string, values: readonly (number | null)[]): Column | null {
  const told = values.filter((value) => value !== null);
  if (told.length < MOSTLY_KNOWN * values.length) return null;
  const mean = told.reduce((sum, value) => sum + value, 0) / told.length;
  const centred = values.map((value) => (value === null ? 0 : value - mean));
  return centred.every((value) => Math.abs(value) < 1e-12) ? null : { name, values: centred };
}

/** The how-many-eth picking of its mound a fruit came with. */
function pickingOrder(readings: readonly SugarReading[]): number[] {
  return readings.map(
    ({ mound, picked_on }) =>
      new Set(readings.filter((one) => one.mound === mound && one.picked_on < picked_on).map((one) => one.picked_on))
        .size,
  );
}
