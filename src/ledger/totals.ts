import { because, type Figure, type FigureUnit, happened, type Reason } from '../figure.ts';
import type { Planting } from '../garden/garden.ts';
import type { Harvest } from './harvest.ts';
import { isMass, MEASURES, type Measure, tallyOf, unitOf } from './measure.ts';
import type { SeasonAccount } from './season-account.ts';
import { addTallies, isComplete, NOTHING, type Tally } from './tally.ts';

/** Counts and rates of a set of plantings: what happened, nothing estimated, so no interval. */
export interface Totals {
  readonly plantings: number;
  readonly plants_set: Figure;
  readonly plants_alive: Figure;
  readonly area_m2: Figure;
  readonly measures: Readonly<Record<Measure, MeasureTotals>>;
}

export interface MeasureTotals {
  readonly total: Figure;
  readonly per_plant_set: Figure;
  readonly per_plant_alive: Figure;
  readonly per_m2: Figure;
}

/** Totals of some plantings of a season; `name` stands between the season's stem and theirs, for instance `garden.total`. */
export function totalsOf(account: SeasonAccount, name: string, plantings: readonly Planting[]): Totals {
  const harvests = plantings.map(account.harvestOf);
  const keys = [...plantings.map(({ key }) => key), ...harvests.flatMap((harvest) => harvest?.keys ?? [])];
  const basis = account.bases.of(keys);
  const spots = new Map(plantings.map(({ spot }) => [spot.id, spot.share_m2]));
  const area = sumOrNull([...spots.values()]);
  const alive = sumOrNull(plantings.map(({ plants_alive }) => plants_alive));
  const set = plantings.reduce((sum, planting) => sum + planting.plants_set, 0);
  const count = (
    measured: string,
    unit: FigureUnit,
    value: number | null,
    n: number,
    method: string,
    reason: Reason | null,
  ): Figure => happened({ id: `${account.stem}.${name}.${measured}`, value, unit, n, method, basis, reason });
  const totalsBy = (measure: Measure): MeasureTotals => {
    const { tally, reason } = totalOf(harvests, measure);
    const value = reason && reason.code !== 'at-least' && reason.code !== 'about' ? null : tally.sum;
    const rate = (
      rated: string,
      per: 'plant' | 'm2',
      divisor: number | null,
      method: string,
      lacking: Reason,
    ): Figure => {
      const possible = value !== null && divisor !== null && divisor > 0;
      return count(
        rated,
        unitOf(measure, per),
        possible ? value / divisor : null,
        tally.told,
        method,
        possible ? reason : divisor ? reason : lacking,
      );
    };
    return {
      total: count(measure, unitOf(measure), value, tally.told, methodOf(harvests), reason),
      per_plant_set: rate(`${measure}_per_plant`, 'plant', set, 'per-plant-set', because('no-plants-set')),
      per_plant_alive: rate(
        `${measure}_per_plant_alive`,
        'plant',
        alive,
        'per-plant-alive',
        because('plants-alive-missing'),
      ),
      per_m2: rate(`${measure}_per_m2`, 'm2', area, 'per-area', because('area-missing')),
    };
  };
  return {
    plantings: plantings.length,
    plants_set: count('plants_set', 'plants', set, plantings.length, 'plain-count', null),
    plants_alive: count(
      'plants_alive',
      'plants',
      alive,
      plantings.length,
      'plain-count',
      alive === null ? because('plants-alive-missing') : null,
    ),
    area_m2: count('area_m2', 'm2', area, spots.size, 'per-area', area === null ? because('area-missing') : null),
    measures: Object.fromEntries(MEASURES.map((measure) => [measure, totalsBy(measure)])) as Record<
      Measure,
      MeasureTotals
    >,
  };
}

/** The sum over the fruits told, and what has to be said beside it. */
function totalOf(harvests: readonly (Harvest | null)[], measure: Measure): { tally: Tally; reason: Reason | null } {
  const recorded = harvests.filter((harvest) => harvest !== null);
  const tally = recorded.length > 0 ? addTallies(recorded.map((harvest) => tallyOf(harvest, measure))) : NOTHING;
  if (recorded.length === 0) return { tally, reason: because('no-harvest-record') };
  // A split fruit's sound mass is known to be nothing; that does not make a mass of sound ones nobody weighed.
  const unweighed =
    measure === 'sound_kg' && recorded.every(isUnweighed) && recorded.some(({ sound }) => sound.sum > 0);
  if ((tally.told === 0 && tally.of > 0) || unweighed)
    return { tally, reason: because(isMass(measure) ? 'none-weighed' : 'condition-missing', { of: tally.of }) };
  const missing = harvests.length - recorded.length;
  if (!isComplete(tally) || missing > 0)
    return { tally, reason: because('at-least', { told: tally.told, of: tally.of, missing }) };
  return { tally, reason: recorded.some(({ about }) => about) ? because('about') : null };
}

const isUnweighed = ({ mass_kg }: Harvest): boolean => mass_kg.told === 0;

const methodOf = (harvests: readonly (Harvest | null)[]): string =>
  harvests.some((harvest) => harvest && harvest.planting.fruits.length > 0 && harvest.planting.pickings.length > 0)
    ? 'larger-count'
    : 'plain-count';

function sumOrNull(values: readonly (number | null)[]): number | null {
  return values.reduce<number | null>((sum, value) => (sum === null || value === null ? null : sum + value), 0);
}
