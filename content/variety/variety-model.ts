import type { Facts } from '../../src/book/chapter.ts';
import type { Dated } from '../../src/dated.ts';
import type { Figure, FigureUnit } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import type { Variety } from '../../src/garden/garden.ts';
import { sharedKind } from '../../src/garden/shared-kind.ts';
import { type Measure, unitOf } from '../../src/ledger/measure.ts';
import type { VarietySeason } from '../../src/ledger/variety-season.ts';
import { type OwnStanding, ownStanding } from './own-standing.ts';
import { type WordCounts, wordsOf } from './words.ts';

export interface VarietyModel {
  readonly name: string;
  readonly crop: { readonly one: string; readonly many: string };
  readonly seed: Variety['seed'];
  readonly slip: string | null;
  readonly stated_size: string | null;
  readonly stated_days: number | null;
  readonly stated_days_from: string | null;
  readonly yardstick: boolean;
  readonly note: string | null;
  /** Seasons with a harvest, the last first. */
  readonly rows: readonly SeasonRow[];
  /** What was said of its fruits in words, the last season first. */
  readonly words: readonly WordCounts[];
  /** The last season it was planted in, harvested or not. */
  readonly latest: SeasonRow | null;
  readonly sound_told: boolean;
  readonly mass_told: boolean;
  readonly measure: Measure;
  readonly unit: FigureUnit;
  readonly metered: boolean;
  readonly weighed: boolean;
  readonly weighed_seasons: number;
  /** Which words anybody ever said. */
  readonly said: { readonly sweet: boolean; readonly liked: boolean; readonly size: boolean };
  readonly chart: string | null;
  readonly own: OwnStanding | null;
}

export interface SeasonRow {
  readonly label: string;
  readonly spots: number;
  readonly kind: string;
  readonly plants: Figure;
  readonly fruits: Figure;
  readonly sound: Figure;
  readonly mass: Figure;
  readonly mean: Figure;
  readonly measure: Measure;
  readonly heaviest: Figure;
  readonly least_sugar: Figure;
  readonly most_sugar: Figure;
  readonly first_picked_on: Dated | null;
  readonly first_pick_days: Figure;
}

/** Everything the page of one variety reads. */
export function varietyModel(
  facts: Facts,
  variety: Variety,
  seasons: readonly VarietySeason[],
  chart: string | null,
): VarietyModel {
  const { garden } = facts;
  const planted = seasons.map(rowOf).reverse();
  const rows = planted.filter(({ fruits }) => fruits.value !== null);
  const words = wordsOf([...seasons].reverse());
  const measure = rows[0]?.measure ?? 'fruits';
  return {
    name: variety.name,
    crop: cropNames(variety.crop, garden.about.locale),
    seed: variety.seed,
    slip: variety.slip === 'unknown' ? null : variety.slip,
    stated_size: variety.stated_size,
    stated_days: variety.stated_days,
    stated_days_from: variety.stated_days_from,
    yardstick: variety.yardstick === true,
    note: variety.note,
    rows,
    words,
    said: {
      sweet: words.some(({ sweet }) => sweet.length > 0),
      liked: words.some(({ liked }) => liked.length > 0),
      size: words.some(({ size }) => size.length > 0),
    },
    weighed_seasons: rows.filter(({ heaviest }) => heaviest.value !== null).length,
    latest: planted[0] ?? null,
    measure,
    unit: unitOf(measure, 'plant'),
    metered: rows.some(({ most_sugar }) => most_sugar.value !== null),
    sound_told: rows.some(({ sound }) => sound.value !== null),
    mass_told: rows.some(({ mass }) => mass.value !== null),
    weighed: rows.some(({ heaviest }) => heaviest.value !== null),
    chart,
    own: ownStanding(facts, variety),
  };
}

function rowOf(season: VarietySeason): SeasonRow {
  const { fruits, sound_fruits, kg } = season.totals.measures;
  return {
    label: season.label,
    spots: new Set(season.plantings.map(({ spot }) => spot.id)).size,
    kind: sharedKind(season.plantings),
    plants: season.totals.plants_set,
    fruits: fruits.total,
    sound: sound_fruits.total,
    mass: kg.total,
    mean: season.mean,
    measure: season.measure,
    heaviest: season.heaviest,
    least_sugar: season.least_sugar,
    most_sugar: season.most_sugar,
    first_picked_on: season.first_pick?.picked_on ?? null,
    first_pick_days: season.first_pick_days,
  };
}
