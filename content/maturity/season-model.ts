import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import type { Dated } from '../../src/dated.ts';
import type { Figure } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { cropsOf } from '../../src/garden/crops-of.ts';
import type { Crop, Variety } from '../../src/garden/garden.ts';
import type { HeatSettings } from '../../src/garden/weather-settings.ts';
import type { SeasonMaturity } from '../../src/ledger/maturity/season-maturity.ts';
import type { Duration, VarietyMaturity } from '../../src/ledger/maturity/variety-maturity.ts';
import { daysChart } from './charts.ts';

export interface SeasonModel {
  readonly label: string;
  readonly crops: readonly CropModel[];
  /** Earlier seasons with a page of their own; empty on theirs. */
  readonly others: readonly { readonly label: string; readonly path: string }[];
}

export interface CropModel {
  readonly chart: Chart | null;
  readonly names: { readonly one: string; readonly many: string };
  readonly rows: readonly Row[];
  /** At least one fruit has a set day or a size it was first seen at. */
  readonly from_set: boolean;
  readonly has_register: boolean;
  readonly heat_told: boolean;
  readonly heat_settings: HeatSettings | null;
  /** What the sources give as base, in °C; null when the crop's file has none. */
  readonly base_range: { readonly low: number; readonly high: number } | null;
  /** The variety whose set fruits ripened soonest and the one that took longest, when both are told and differ. */
  readonly soonest: Row | null;
  readonly latest: Row | null;
}

export interface Row {
  readonly name: string;
  readonly ripened: Figure | null;
  readonly set: Figure | null;
  readonly from_set: Duration | null;
  readonly from_planting: Duration | null;
  readonly heat: Duration | null;
  /** From the pickings where there is no register. */
  readonly first_picked_on: Dated | null;
  readonly first_pick_days: Figure | null;
  readonly last_picked_on: Dated | null;
  readonly stated_days: number | null;
  readonly stated_days_from: Variety['stated_days_from'];
}

/** Everything the page of one season reads; without crops when nothing of it ripened or was picked. */
export function seasonModel(facts: Facts, season: SeasonMaturity): SeasonModel {
  const grown = facts.garden.varieties.filter(({ id }) =>
    season.season.plantings.some(({ variety }) => variety?.id === id),
  );
  return {
    label: season.season.label,
    crops: cropsOf(grown)
      .map((crop) =>
        cropModel(
          facts,
          season,
          crop,
          grown.filter((variety) => variety.crop.id === crop.id),
        ),
      )
      .filter(({ rows }) => rows.length > 0),
    others: [],
  };
}

function cropModel(facts: Facts, season: SeasonMaturity, crop: Crop, varieties: readonly Variety[]): CropModel {
  const found = season.crops.find((one) => one.crop.id === crop.id) ?? null;
  const rows = varieties
    .map((variety) =>
      rowOf(facts, season, variety, found?.varieties.find((one) => one.variety.id === variety.id) ?? null),
    )
    .filter(({ ripened, first_picked_on }) => (ripened?.value ?? 0) > 0 || first_picked_on !== null);
  const ordered = rows
    .filter(({ from_set }) => from_set !== null && from_set.middle.value !== null)
    .sort((a, b) => (a.from_set?.middle.value ?? 0) - (b.from_set?.middle.value ?? 0));
  const [soonest, latest] = [ordered[0] ?? null, ordered.at(-1) ?? null];
  const apart = soonest?.from_set?.middle.value !== latest?.from_set?.middle.value;
  return {
    chart: found && daysChart(facts, season, found),
    names: cropNames(crop, facts.garden.about.locale),
    rows,
    from_set: rows.some(({ from_set }) => (from_set?.n ?? 0) > 0),
    has_register: rows.some(({ set }) => set !== null),
    heat_told: rows.some(({ heat }) => heat !== null && heat.middle.value !== null),
    heat_settings: found?.heat_settings ?? null,
    base_range: crop.heat && { low: crop.heat.base_low_c, high: crop.heat.base_high_c },
    soonest,
    latest: apart ? latest : null,
  };
}

function rowOf(facts: Facts, { season }: SeasonMaturity, variety: Variety, found: VarietyMaturity | null): Row {
  const picked = facts.ledger.varieties.get(variety.id)?.find(({ slug }) => slug === season.slug);
  return {
    name: variety.name,
    ripened: found?.ripened ?? null,
    set: found?.set ?? null,
    from_set: found?.days.set ?? null,
    from_planting: found?.days.planting ?? null,
    heat: found?.heat.set ?? null,
    first_picked_on: picked?.first_pick?.picked_on ?? null,
    first_pick_days: picked?.first_pick_days ?? null,
    last_picked_on: picked?.last_picked_on ?? null,
    stated_days: variety.stated_days,
    stated_days_from: variety.stated_days_from,
  };
}
