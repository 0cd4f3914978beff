import type { Day } from '../day.ts';
import type { Crop, Garden, Planting, Season, Spot, Variety } from '../garden/garden.ts';
import type { Bases } from './bases.ts';
import { type Comparison, compare } from './comparison.ts';
import { harvestOf } from './harvest.ts';
import { MEASURES, type Measure } from './measure.ts';
import { type Totals, totalsOf } from './totals.ts';

export interface SpotYield {
  readonly spot: Spot;
  readonly plantings: readonly Planting[];
  readonly totals: Totals;
}

export interface VarietyTotals {
  /** Null gathers the plantings whose variety nobody knows. */
  readonly variety: Variety | null;
  readonly totals: Totals;
}

export interface CropYield {
  readonly crop: Crop;
  readonly totals: Totals;
  /** In the alphabet's order. */
  readonly varieties: readonly VarietyTotals[];
  readonly comparisons: Readonly<Record<Measure, Comparison>>;
}

/** What one season gave: the garden, its crops, varieties and spots. */
export interface SeasonYield {
  readonly season: Season;
  /** False while the season runs, as far as the day of the book. */
  readonly over: boolean;
  /** Fruits still growing in the register. */
  readonly growing: number;
  /** A count or mass of its pickings was reckoned, not read. */
  readonly reckoned: boolean;
  readonly garden: Totals;
  /** In the order of their names. */
  readonly crops: readonly CropYield[];
  /** Plantings whose variety, and so crop, nobody knows; null when there are none. */
  readonly unknown: VarietyTotals | null;
  readonly spots: readonly SpotYield[];
}

export function seasonYield(garden: Garden, season: Season, today: Day, bases: Bases): SeasonYield {
  const stem = `yield.${season.slug}`;
  const grown = garden.varieties.filter(({ id }) => season.plantings.some(({ variety }) => variety?.id === id));
  const crops = [...new Map(grown.map(({ crop }) => [crop.id, crop])).values()].sort((a, b) => (a.id < b.id ? -1 : 1));
  const ofVariety = (variety: Variety | null): Planting[] =>
    season.plantings.filter((planting) => (planting.variety?.id ?? null) === (variety?.id ?? null));
  const unknown = ofVariety(null);
  return {
    season,
    over: season.ends_on <= today,
    reckoned: season.plantings.some((planting) => harvestOf(planting)?.about),
    growing: season.plantings.reduce((sum, planting) => sum + (harvestOf(planting)?.growing ?? 0), 0),
    garden: totalsOf(`${stem}.garden.total`, season.plantings, bases),
    crops: crops.map((crop) =>
      cropYield(
        stem,
        season,
        crop,
        grown.filter((variety) => variety.crop.id === crop.id),
        ofVariety,
        bases,
      ),
    ),
    unknown:
      unknown.length > 0 ? { variety: null, totals: totalsOf(`${stem}.variety.unknown.total`, unknown, bases) } : null,
    spots: spotYields(stem, season, bases),
  };
}

function cropYield(
  stem: string,
  season: Season,
  crop: Crop,
  varieties: readonly Variety[],
  ofVariety: (variety: Variety) => Planting[],
  bases: Bases,
): CropYield {
  const comparisons = MEASURES.map((measure) => [measure, compare(stem, season, varieties, measure, bases)]);
  return {
    crop,
    totals: totalsOf(`${stem}.crop.${crop.id}`, varieties.flatMap(ofVariety), bases),
    varieties: varieties.map((variety) => ({
      variety,
      totals: totalsOf(`${stem}.variety.${variety.id}.total`, ofVariety(variety), bases),
    })),
    comparisons: Object.fromEntries(comparisons) as Record<Measure, Comparison>,
  };
}

function spotYields(stem: string, season: Season, bases: Bases): SpotYield[] {
  const spots = [...new Map(season.plantings.map(({ spot }) => [spot.id, spot])).values()].sort((a, b) =>
    a.id < b.id ? -1 : 1,
  );
  return spots.map((spot) => {
    const plantings = season.plantings.filter((planting) => planting.spot.id === spot.id);
    return { spot, plantings, totals: totalsOf(`${stem}.spot.${spot.id}`, plantings, bases) };
  });
}
