import type { Day } from '../day.ts';
import { cropsOf } from '../garden/crops-of.ts';
import type { Crop, Garden, Planting, Season, Spot, Variety } from '../garden/garden.ts';
import { naturally } from '../natural-order.ts';
import type { Bases } from './bases.ts';
import { type Comparison, compare } from './comparison.ts';
import { MEASURES, type Measure } from './measure.ts';
import { openAccount, type SeasonAccount } from './season-account.ts';
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
  const account = openAccount(season, bases);
  const harvests = season.plantings.flatMap((planting) => account.harvestOf(planting) ?? []);
  const grown = garden.varieties.filter(({ id }) => season.plantings.some(({ variety }) => variety?.id === id));
  const unknown = season.plantings.filter(({ variety }) => variety === null);
  return {
    season,
    over: season.ends_on <= today,
    reckoned: harvests.some(({ about }) => about),
    growing: harvests.reduce((sum, { growing }) => sum + growing, 0),
    garden: totalsOf(account, 'garden.total', season.plantings),
    crops: cropsOf(grown).map((crop) =>
      cropYield(
        account,
        crop,
        grown.filter((variety) => variety.crop.id === crop.id),
      ),
    ),
    unknown: unknown.length > 0 ? { variety: null, totals: totalsOf(account, 'variety.unknown.total', unknown) } : null,
    spots: spotYields(account),
  };
}

function cropYield(account: SeasonAccount, crop: Crop, varieties: readonly Variety[]): CropYield {
  const ofVariety = ({ id }: Variety): Planting[] =>
    account.season.plantings.filter(({ variety }) => variety?.id === id);
  const comparisons = MEASURES.map((measure) => [measure, compare(account, varieties, measure)]);
  return {
    crop,
    totals: totalsOf(account, `crop.${crop.id}`, varieties.flatMap(ofVariety)),
    varieties: varieties.map((variety) => ({
      variety,
      totals: totalsOf(account, `variety.${variety.id}.total`, ofVariety(variety)),
    })),
    comparisons: Object.fromEntries(comparisons) as Record<Measure, Comparison>,
  };
}

function spotYields(account: SeasonAccount): SpotYield[] {
  const { plantings: all } = account.season;
  const spots = [...new Map(all.map(({ spot }) => [spot.id, spot])).values()].sort((a, b) => naturally(a.id, b.id));
  return spots.map((spot) => {
    const plantings = all.filter((planting) => planting.spot.id === spot.id);
    return { spot, plantings, totals: totalsOf(account, `spot.${spot.id}`, plantings) };
  });
}
