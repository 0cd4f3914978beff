import type { Facts } from '../../src/book/chapter.ts';
import { type Dated, isOneDay } from '../../src/dated.ts';
import type { Day } from '../../src/day.ts';
import { because, type Figure, type FigureUnit, happened } from '../../src/figure.ts';
import type { Fruit, Planting, Season } from '../../src/garden/garden.ts';
import { sharedKind } from '../../src/garden/shared-kind.ts';
import { type FirstPick, firstPickOf } from '../../src/ledger/first-pick.ts';
import type { SeasonYield } from '../../src/ledger/season-yield.ts';
import { type BestFruit, bestFruitOf } from './best-fruit.ts';

/** The last season in a few lines. */
export interface Glance {
  readonly label: string;
  /** The day the records go to while the season runs; null once it is over. */
  readonly until: Day | null;
  readonly spots: number;
  readonly kind: string;
  readonly plants: Figure;
  /** Known varieties standing in it. */
  readonly varieties: number;
  /** The first day anything was planted out; null when none is known to the day. */
  readonly planted_from: Dated | null;
  readonly fruits: Figure;
  readonly mass: Figure;
  readonly rain: Figure | null;
  readonly hot_days: Figure | null;
  readonly first: FirstLine | null;
  readonly best: BestLine | null;
}

interface FirstLine {
  /** Null when more than one planting may have borne it. */
  readonly from: { readonly variety: string | null; readonly spot: string } | null;
  readonly picked_on: Dated;
  readonly days: Figure;
}

interface BestLine {
  readonly named_for: BestFruit['named_for'];
  readonly variety: string | null;
  readonly spot: string;
  readonly picked_on: Dated | null;
  readonly liked: string | null;
  readonly sugar: Figure;
  readonly mass: Figure;
}

/** Null before the first season with a planting. */
export function glanceOf({ ledger, today }: Facts): Glance | null {
  const latest = ledger.yields.filter(({ season }) => season.plantings.length > 0).at(-1);
  if (!latest) return null;
  const { season, garden } = latest;
  const weather = ledger.weather.get(season.slug);
  const basisOf = (keys: readonly string[]): string => ledger.bases.of(keys);
  const first = firstPickOf(season.plantings);
  const best = bestFruitOf(season.plantings);
  return {
    label: season.label,
    until: latest.over ? null : today,
    spots: latest.spots.length,
    kind: sharedKind(season.plantings),
    plants: garden.plants_set,
    varieties: varietiesOf(latest),
    planted_from: plantedFrom(season.plantings),
    fruits: garden.measures.fruits.total,
    mass: garden.measures.kg.total,
    rain: weather?.measures.rain_mm.figure ?? null,
    hot_days: weather?.measures.hot_days.figure ?? null,
    first: first && firstLine(season, first, basisOf),
    best: best && bestLine(season, best, basisOf),
  };
}

export const glanceFigures = ({ first, best }: Glance): Figure[] => [
  ...(first ? [first.days] : []),
  ...(best ? [best.sugar, best.mass] : []),
];

const varietiesOf = ({ crops }: SeasonYield): number => crops.reduce((sum, { varieties }) => sum + varieties.length, 0);

function plantedFrom(plantings: readonly Planting[]): Dated | null {
  return plantings
    .map(({ planted_on }) => planted_on)
    .filter(isOneDay)
    .reduce<Dated | null>(
      (first, date) => (first?.first && date.first && first.first <= date.first ? first : date),
      null,
    );
}

type BasisOf = (keys: readonly string[]) => string;

const firstLine = (season: Season, first: FirstPick, basisOf: BasisOf): FirstLine => {
  const { planting, picked_on, days_from_planting, about, keys } = first;
  const days = single(season, 'first_pick_days', 'days', days_from_planting, keys, basisOf, 'planting-day-unknown');
  return {
    from: planting && { variety: planting.variety?.name ?? null, spot: planting.spot.id },
    picked_on,
    days: about && days.value !== null ? { ...days, reason: because('about') } : days,
  };
};

function bestLine(season: Season, { planting, fruit, named_for }: BestFruit, basisOf: BasisOf): BestLine {
  const { pick, cut }: Fruit = fruit;
  const keys = [fruit.key];
  return {
    named_for,
    variety: planting.variety?.name ?? null,
    spot: planting.spot.id,
    picked_on: pick?.picked_on ?? null,
    liked: cut?.liked ?? null,
    sugar: single(season, 'best_brix', 'brix', cut?.brix_centre ?? null, keys, basisOf, 'none-metered'),
    mass: single(season, 'best_kg', 'kg', pick?.mass_kg ?? null, keys, basisOf, 'none-weighed'),
  };
}

const single = (
  season: Season,
  name: string,
  unit: FigureUnit,
  value: number | null,
  keys: readonly string[],
  basisOf: BasisOf,
  why: string,
): Figure =>
  happened({
    id: `front.${season.slug}.${name}`,
    value,
    unit,
    n: value === null ? 0 : 1,
    method: 'single-record',
    basis: basisOf(keys),
    reason: value === null ? because(why) : null,
  });
