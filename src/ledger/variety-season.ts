import type { Dated } from '../dated.ts';
import { because, type Figure, type FigureUnit, happened, type Reason } from '../figure.ts';
import type { Planting, Variety } from '../garden/garden.ts';
import type { Bases } from './bases.ts';
import { type FirstPick, firstPickOf, lastPickOf } from './first-pick.ts';
import { mainMeasure } from './main-measure.ts';
import type { Measure } from './measure.ts';
import type { CropYield, SeasonYield } from './season-yield.ts';
import type { Totals } from './totals.ts';

/** What one variety did in one season. */
export interface VarietySeason {
  readonly slug: string;
  readonly label: string;
  readonly plantings: readonly Planting[];
  readonly totals: Totals;
  /** By the season's main measure for the crop. */
  readonly measure: Measure;
  readonly mean: Figure;
  /** Masses of its weighed picked fruits, the lightest first. */
  readonly masses_kg: readonly number[];
  readonly heaviest: Figure;
  /** Lowest and highest sugar at the centre of fruits found just ripe or prime. */
  readonly least_sugar: Figure;
  readonly most_sugar: Figure;
  readonly first_pick: FirstPick | null;
  readonly first_pick_days: Figure;
  readonly last_picked_on: Dated | null;
}

/** Every season a variety was planted in, the first first. */
export function varietySeasons(variety: Variety, yields: readonly SeasonYield[], bases: Bases): VarietySeason[] {
  return yields.flatMap((season) => {
    const crop = season.crops.find(({ varieties }) => varieties.some((row) => row.variety?.id === variety.id));
    return crop ? [varietySeason(variety, season, crop, bases)] : [];
  });
}

function varietySeason(variety: Variety, { season }: SeasonYield, crop: CropYield, bases: Bases): VarietySeason {
  const plantings = season.plantings.filter((planting) => planting.variety?.id === variety.id);
  const measure = mainMeasure(crop.comparisons);
  const mean = crop.comparisons[measure].means.find((row) => row.variety.id === variety.id)?.mean;
  const totals = crop.varieties.find((row) => row.variety?.id === variety.id)?.totals;
  if (!mean || !totals) throw new Error(`invalid yield: ${variety.id} has no row in ${season.label}`);
  const figure = (
    name: string,
    unit: FigureUnit,
    value: number | null,
    keys: readonly string[],
    why: string,
    remark: Reason | null = null,
  ): Figure =>
    happened({
      id: `variety.${variety.id}.${season.slug}.${name}`,
      value,
      unit,
      n: keys.length,
      method: 'single-record',
      basis: bases.of(keys),
      reason: value === null ? because(why) : remark,
    });
  const weighed = plantings
    .flatMap(({ fruits }) => fruits)
    .flatMap(({ key, fate, pick }) =>
      fate === 'picked' && pick && pick.mass_kg !== null ? [{ key, value: pick.mass_kg }] : [],
    );
  const tasted = plantings
    .flatMap(({ fruits }) => fruits)
    .flatMap(({ key, cut }) =>
      cut && cut.brix_centre !== null && (cut.state === 'just-ripe' || cut.state === 'prime')
        ? [{ key, value: cut.brix_centre }]
        : [],
    );
  const keysOf = (rows: readonly { key: string }[]): string[] => rows.map(({ key }) => key);
  const first = firstPickOf(plantings);
  return {
    slug: season.slug,
    label: season.label,
    plantings,
    totals,
    measure,
    mean,
    masses_kg: weighed.map(({ value }) => value).sort((a, b) => a - b),
    heaviest: figure('heaviest_kg', 'kg', largest(weighed), keysOf(weighed), 'none-weighed'),
    least_sugar: figure('least_brix', 'brix', smallest(tasted), keysOf(tasted), 'none-metered'),
    most_sugar: figure('most_brix', 'brix', largest(tasted), keysOf(tasted), 'none-metered'),
    last_picked_on: lastPickOf(plantings),
    first_pick: first,
    first_pick_days: figure(
      'first_pick_days',
      'days',
      first?.days_from_planting ?? null,
      first?.keys ?? [],
      first ? 'planting-day-unknown' : 'no-ripe-pick',
      first?.about ? because('about') : null,
    ),
  };
}

interface Single {
  readonly value: number;
}

const largest = (rows: readonly Single[]): number | null =>
  rows.reduce<number | null>((best, { value }) => (best === null || value > best ? value : best), null);

const smallest = (rows: readonly Single[]): number | null =>
  rows.reduce<number | null>((best, { value }) => (best === null || value < best ? value : best), null);
