import type { Figure, FigureUnit, Interval, Reason } from '../../figure.ts';
import type { Crop, Garden, Station } from '../../garden/garden.ts';
import { type SugarSettings, sugarSettingsOf } from '../../garden/sugar-settings.ts';
import { type PermutationTest, shuffleDays } from '../../statistics/permutation.ts';
import { randomStream } from '../../statistics/random-stream.ts';
import { largestCorrelation } from '../../statistics/window-strength.ts';
import type { Bases } from '../bases.ts';
import { evidenceOf, type RainEvidence } from './evidence.ts';
import { type RainPairs, rainPairs } from './pairs.ts';
import { printedSlope, slopeOfWindow } from './printed-slope.ts';
import type { RainSlope } from './rain-slope.ts';
import { rainRecord } from './rain-windows.ts';
import { type SugarReading, sugarReadings, WINDOWS } from './reading.ts';

const DRAWS = 9999;
const SEED = 1;

export interface CropRain {
  readonly crop: Crop;
  readonly settings: SugarSettings;
  readonly readings: readonly SugarReading[];
  /** Picked because rain was coming; not in the fit. */
  readonly forecast: readonly SugarReading[];
  readonly evidence: RainEvidence;
  /** °Brix per mm; its reason says why there is none. */
  readonly slope: Figure;
  readonly fit: RainSlope | null;
  /** The slope by each of WINDOWS. */
  readonly windows: readonly { readonly days: number; readonly slope: Figure }[];
  readonly permutation: PermutationTest | null;
  readonly pairs: RainPairs;
}

/** Rain against sugar for every crop with a ripe metered fruit or a word held against the last; none without a station. */
export function cropRains(garden: Garden, bases: Bases): CropRain[] {
  const station = garden.stations.find(({ id }) => id === garden.about.weather?.station);
  if (!station) return [];
  const settings = sugarSettingsOf(garden.about);
  const all = sugarReadings(garden, rainRecord(station), settings.rain_days);
  const crops = [...new Map(garden.varieties.map(({ crop }) => [crop.id, crop])).values()].sort((a, b) =>
    a.id < b.id ? -1 : 1,
  );
  return crops
    .map((crop) => cropRain({ garden, station, bases, settings, all }, crop))
    .filter(({ readings, pairs }) => readings.length > 0 || pairs.fruits > 0);
}

interface Desk {
  readonly garden: Garden;
  readonly station: Station;
  readonly bases: Bases;
  readonly settings: SugarSettings;
  readonly all: readonly SugarReading[];
}

function cropRain({ garden, station, bases, settings, all }: Desk, crop: Crop): CropRain {
  const own = all.filter(({ variety }) => garden.varieties.find(({ id }) => id === variety)?.crop.id === crop.id);
  const readings = own.filter(({ forecast }) => !forecast);
  const evidence = evidenceOf(readings);
  const basis = bases.of(readings.map(({ key }) => key));
  const { fit, reason } = printedSlope(readings, evidence);
  const figure = (name: string, of: RainSlope | null, why: Reason | null): Figure =>
    slopeFigure(`rain.${crop.id}.${name}`, of, why, evidence, basis);
  return {
    crop,
    settings,
    readings,
    forecast: own.filter(({ forecast }) => forecast),
    evidence,
    slope: figure('slope', fit, reason),
    fit,
    windows: WINDOWS.map((days, index) => {
      const found = slopeOfWindow(readings, index);
      return { days, slope: figure(`slope_${days}_days`, found.fit, found.reason) };
    }),
    permutation: fit ? permuted(readings) : null,
    pairs: rainPairs(garden, station, crop.id, settings.rain_days),
  };
}

/** Whole picking days change places within their season; sugar less its variety's mean in that season. */
function permuted(readings: readonly SugarReading[]): PermutationTest | null {
  const told = readings.filter(({ windows }) => windows.every((rain) => rain !== null));
  const cells = new Map<string, number[]>();
  const cellOf = ({ season, variety }: SugarReading): string => `${season} ${variety}`;
  for (const one of told) cells.set(cellOf(one), [...(cells.get(cellOf(one)) ?? []), one.brix]);
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
  const days = [...new Map(told.map((one) => [one.picked_on, one])).values()];
  const test = shuffleDays(
    days.map(({ picked_on, season, windows }) => ({
      id: picked_on,
      stratum: season,
      covariates: windows.map((rain) => rain ?? 0),
    })),
    told.map((one) => ({ day: one.picked_on, residual: one.brix - mean(cells.get(cellOf(one)) ?? []) })),
    largestCorrelation,
    { random: randomStream(SEED), draws: DRAWS },
  );
  return 'cannot' in test ? null : test;
}

const UNIT: FigureUnit = 'brix_per_mm';

function slopeFigure(
  id: string,
  fit: RainSlope | null,
  reason: Reason | null,
  { fruits, picking_days }: RainEvidence,
  basis: string,
): Figure {
  const interval: Interval | null = fit?.interval ?? null;
  return {
    id,
    value: fit?.estimate ?? null,
    unit: UNIT,
    interval,
    n: fruits,
    replicate: { kind: 'picking day', count: picking_days },
    reach: 'next-summer-here',
    method: 'rain-slope',
    source: 'kenward-roger-1997',
    basis,
    reason,
  };
}
