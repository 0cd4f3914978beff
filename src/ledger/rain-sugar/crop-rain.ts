import type { Figure, FigureUnit, Interval } from '../../figure.ts';
import { cropsOf } from '../../garden/crops-of.ts';
import type { Crop, Garden, Station } from '../../garden/garden.ts';
import { ownStation } from '../../garden/own-station.ts';
import { type SugarSettings, sugarSettingsOf } from '../../garden/sugar-settings.ts';
import { type Kept, keptOr } from '../../kept.ts';
import type { PermutationTest } from '../../statistics/permutation.ts';
import { randomStream } from '../../statistics/random-stream.ts';
import type { Bases } from '../bases.ts';
import { type Companion, companionsOf } from './companion.ts';
import { type DayPull, dayPulls } from './day-pull.ts';
import type { RainEvidence } from './evidence.ts';
import { type RainPairs, rainPairs } from './pairs.ts';
import { type PrintedSlope, printedSlope, slopeOfWindow } from './printed-slope.ts';
import { rainShuffle } from './rain-shuffle.ts';
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
  readonly apart: readonly SugarReading[];
  /** By how much of the slope rests on them, most first. */
  readonly pulls: readonly DayPull[];
  readonly companions: readonly Companion[];
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
export function cropRains(garden: Garden, bases: Bases, kept: Kept): CropRain[] {
  const station = ownStation(garden);
  if (!station) return [];
  const settings = sugarSettingsOf(garden.about);
  const all = sugarReadings(garden, rainRecord(station), settings.rain_days);
  return cropsOf(garden.varieties)
    .map((crop) => cropRain({ garden, station, bases, settings, all, kept }, crop))
    .filter(({ readings, pairs }) => readings.length > 0 || pairs.fruits > 0);
}

interface Desk {
  readonly garden: Garden;
  readonly station: Station;
  readonly bases: Bases;
  readonly settings: SugarSettings;
  readonly all: readonly SugarReading[];
  readonly kept: Kept;
}

function cropRain({ garden, station, bases, settings, all, kept }: Desk, crop: Crop): CropRain {
  const own = all.filter(({ variety }) => garden.varieties.find(({ id }) => id === variety)?.crop.id === crop.id);
  const readings = own.filter(({ forecast }) => !forecast);
  const apart = own.filter(({ forecast }) => forecast);
  const basis = bases.of(readings.map(({ key }) => key));
  const ownSlope = printedSlope(readings, apart, kept);
  const { fit, evidence } = ownSlope;
  const figure = (name: string, of: PrintedSlope): Figure => slopeFigure(`rain.${crop.id}.${name}`, of, basis);
  return {
    crop,
    settings,
    readings,
    apart,
    pulls: dayPulls(readings),
    companions: companionsOf(readings, station, settings.rain_days),
    evidence,
    slope: figure('slope', ownSlope),
    fit,
    windows: WINDOWS.map((days, index) => {
      // The garden's own window is fitted already.
      const found = days === settings.rain_days ? ownSlope : slopeOfWindow(readings, index, kept);
      return { days, slope: figure(`slope_${days}_days`, found) };
    }),
    permutation: fit ? keptShuffle(readings, kept) : null,
    pairs: rainPairs(garden, station, crop.id, settings.rain_days),
  };
}

const keptShuffle = (readings: readonly SugarReading[], kept: Kept): PermutationTest | null =>
  keptOr(kept, 'fits', JSON.stringify(['rain-shuffle', SEED, DRAWS, readings]), () =>
    rainShuffle(readings, { random: randomStream(SEED), draws: DRAWS }),
  );

const UNIT: FigureUnit = 'brix_per_mm';

function slopeFigure(
  id: string,
  { fit, reason, evidence: { fruits, picking_days } }: PrintedSlope,
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
