import type { Facts } from '../../src/book/chapter.ts';
import { type SeedRow, seedRow } from '../../src/book/seed-row.ts';
import type { Day } from '../../src/day.ts';
import type { Figure } from '../../src/figure.ts';
import type { Spot } from '../../src/garden/garden.ts';
import { sharedKind } from '../../src/garden/shared-kind.ts';
import { FEWEST_MOUNDS } from '../../src/ledger/comparison.ts';
import { MEASURES } from '../../src/ledger/measure.ts';
import type { SeasonYield } from '../../src/ledger/season-yield.ts';
import type { MeasureTotals, Totals } from '../../src/ledger/totals.ts';
import type { SeasonWeather } from '../../src/ledger/weather/season-weather.ts';
import { type CropSection, cropSection } from './crop-section.ts';

export interface SeasonModel {
  readonly label: string;
  readonly over: boolean;
  /** The day the records go to while the season runs; null once it is over. */
  readonly until: Day | null;
  /** What became of tagged fruits that were not picked, the most first. */
  readonly unpicked: readonly { readonly what: string; readonly count: number }[];
  readonly growing: number;
  /** A count of pickings was written with an "about". */
  readonly reckoned: boolean;
  /** mound, tub, row, bed, or spot when they are of several kinds. */
  readonly kind: string;
  readonly spot_count: number;
  readonly fruits: Figure;
  readonly sound: Figure;
  readonly mass: Figure;
  /** Out of ten looked over; null under ten of them, or when over a third were not. */
  readonly sound_of_ten: TenOf | null;
  readonly alive_known: boolean;
  /** Spots whose ground nobody measured; with any, nothing is told by area. */
  readonly without_area: readonly string[];
  readonly lines: readonly TotalLine[];
  /** Crops with enough to show in a section of their own. */
  readonly crops: readonly CropSection[];
  /** Crops of one variety in a spot or two: the table of spots says all there is. */
  readonly lone: readonly CropSection[];
  readonly unknown: Totals | null;
  readonly spots: readonly SpotRow[];
  readonly weather: SeasonWeather | null;
  /** Every season with a harvest, the last first; empty on an earlier season's page. */
  readonly seasons: readonly SeasonRow[];
  /** Labels of seasons with nothing recorded. */
  readonly waiting: readonly string[];
  readonly differing: readonly string[];
  /** What this garden ever wrote down of the season; a column nobody fed is left out. */
  readonly told: {
    readonly sound: boolean;
    readonly mass: boolean;
    readonly area: boolean;
    readonly register: boolean;
    readonly pickings: boolean;
  };
}

/** A share told as so many of ten. */
export interface TenOf extends SeedRow {
  /** Every fruit of the total was looked over. */
  readonly of_all: boolean;
}

export interface TotalLine extends MeasureTotals {
  readonly measure: string;
}

export interface SpotRow {
  readonly spot: Spot;
  readonly names: readonly string[];
  readonly plants: Figure;
  readonly fruits: Figure;
  readonly sound: Figure;
  readonly mass: Figure;
  readonly mass_per_m2: Figure;
}

export interface SeasonRow {
  readonly label: string;
  readonly path: string;
  readonly plants: Figure;
  readonly fruits: Figure;
  readonly sound: Figure;
  readonly mass: Figure;
  readonly mass_per_plant: Figure;
}

/** Everything the page of one season reads. */
export function seasonModel(
  facts: Facts,
  season: SeasonYield,
  all: readonly SeasonYield[],
  waiting: readonly string[],
): SeasonModel {
  const { garden } = season;
  const { fruits, sound_fruits: sound, kg } = garden.measures;
  const sections = season.crops.map((crop) => cropSection(facts, season, crop));
  return {
    label: season.season.label,
    over: season.over,
    until: season.over ? null : facts.today,
    unpicked: unpickedOf(season),
    growing: season.growing,
    reckoned: season.reckoned,
    kind: sharedKind(season.spots),
    spot_count: season.spots.length,
    fruits: fruits.total,
    sound: sound.total,
    mass: kg.total,
    sound_of_ten: ofTen(sound.total, fruits.total),
    alive_known: garden.plants_alive.value !== null,
    without_area: season.spots.filter(({ spot }) => spot.share_m2 === null).map(({ spot }) => spot.id),
    lines: MEASURES.filter((measure) => measure === 'fruits' || garden.measures[measure].total.value !== null).map(
      (measure) => ({ measure, ...garden.measures[measure] }),
    ),
    crops: sections.filter(isWorthShowing),
    lone: sections.filter((section) => !isWorthShowing(section)),
    unknown: season.unknown?.totals ?? null,
    spots: season.spots.map(({ spot, plantings, totals }) => ({
      spot,
      names: plantings.map(({ variety }) => variety?.name ?? ''),
      plants: totals.plants_set,
      fruits: totals.measures.fruits.total,
      sound: totals.measures.sound_fruits.total,
      mass: totals.measures.kg.total,
      mass_per_m2: totals.measures.kg.per_m2,
    })),
    weather: facts.ledger.weather.get(season.season.slug) ?? null,
    seasons: all.map((row, index) => seasonRow(row, index === 0)),
    waiting,
    told: {
      sound: sound.total.value !== null || all.some((one) => one.garden.measures.sound_fruits.total.value !== null),
      mass: kg.total.value !== null || all.some((one) => one.garden.measures.kg.total.value !== null),
      area: season.spots.some(({ spot }) => spot.share_m2 !== null),
      register: season.season.plantings.some(({ fruits: register }) => register.length > 0),
      pickings: season.season.plantings.some(({ pickings }) => pickings.length > 0),
    },
    differing: season.season.plantings
      .filter(({ fruits: register, pickings }) => register.length > 0 && pickings.length > 0)
      .map(({ spot }) => spot.id),
  };
}

/** Thinned, aborted, left, or lost to something: each with how many of the register. */
function unpickedOf({ season }: SeasonYield): { what: string; count: number }[] {
  const counts = new Map<string, number>();
  for (const { fate, end } of season.plantings.flatMap(({ fruits }) => fruits)) {
    if (fate === 'picked' || fate === 'growing') continue;
    const what = fate === 'lost' ? `lost-${end?.lost_to ?? 'unknown'}` : fate;
    counts.set(what, (counts.get(what) ?? 0) + 1);
  }
  return [...counts]
    .map(([what, count]) => ({ what, count }))
    .sort((a, b) => b.count - a.count || (a.what < b.what ? -1 : 1));
}

const isWorthShowing = ({ rows }: CropSection): boolean =>
  rows.length > 1 || rows.some(({ mounds }) => mounds >= FEWEST_MOUNDS);

function seasonRow({ season, garden }: SeasonYield, isLatest: boolean): SeasonRow {
  const { fruits, sound_fruits, kg } = garden.measures;
  return {
    label: season.label,
    path: isLatest ? 'yield/' : `yield/${season.slug.toLowerCase()}/`,
    plants: garden.plants_set,
    fruits: fruits.total,
    sound: sound_fruits.total,
    mass: kg.total,
    mass_per_plant: kg.per_plant_set,
  };
}

const FEWEST_FOR_TENTHS = 10;
const MOST_MISSING = 1 / 3;

/** A share is full or empty only when it is so to the last fruit. */
function ofTen(part: Figure, whole: Figure): TenOf | null {
  const told = part.n;
  if (
    part.value === null ||
    !whole.value ||
    told < FEWEST_FOR_TENTHS ||
    whole.value - told > whole.value * MOST_MISSING
  )
    return null;
  return { ...seedRow((10 * part.value) / told), of_all: told === whole.value };
}
