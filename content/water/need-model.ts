import type { Stage } from '../../src/agronomy/crop-coefficient.ts';
import type { Facts } from '../../src/book/chapter.ts';
import type { Day } from '../../src/day.ts';
import { because, type Figure, type FigureUnit, reckoned } from '../../src/figure.ts';
import { cropNames } from '../../src/garden/crop-name.ts';
import { measuresOf } from '../../src/garden/measures.ts';
import { ownStation } from '../../src/garden/own-station.ts';
import { thresholdsOf } from '../../src/garden/weather-settings.ts';
import type { CropPlan } from '../../src/ledger/water/crop-plan.ts';
import { pastKeys } from '../../src/ledger/water/stage-keys.ts';
import { usualRain } from '../../src/ledger/water/usual-rain.ts';
import type { StageNeed, WeekNeed } from '../../src/ledger/water/week-need.ts';
import { weatherKey } from './weather-key.ts';

/** Days between waterings, from soils that hold little to soils that hold much. */
export interface DaysBetween {
  readonly low: Figure;
  readonly high: Figure;
}

/** One stage of one crop, as the season that is planned will have it. */
export interface StageRow {
  readonly stage: Stage;
  readonly first: Day;
  readonly last: Day;
  readonly weeks: Readonly<Record<WeekNeed['kind'], WeekRow>>;
  /** Usual rain of a week on the ground of its roots, in cans; null value with few years. */
  readonly rain_cans: Figure;
}

export interface WeekRow {
  readonly litres: Figure;
  readonly cans: Figure;
  /** On the watered ground alone, and on all the ground of the roots; null without the soil's figures. */
  readonly bowl_days: DaysBetween | null;
  readonly ground_days: DaysBetween | null;
}

export interface NeedModel {
  readonly id: string;
  readonly names: { readonly one: string; readonly many: string };
  readonly canopy_m2: number;
  readonly root_m2: number;
  readonly bowl_m2: number | null;
  readonly depth_cm: number;
  /** The average spot of the last season, or the room of one plant. */
  readonly spots: number;
  readonly mulch: 'none' | 'organic' | 'plastic';
  readonly soil_known: boolean;
  readonly years: number;
  readonly rows: readonly StageRow[];
  /** The stage of flower and fruit, or the thirstiest that is known. */
  readonly full: StageRow;
  /** A missed usual week of that stage, given back over three days: cans a day. */
  readonly way_back_cans: Figure;
  /** What a drip line would have to give each day of a hot week of that stage. */
  readonly drip_l_per_day: Figure;
}

const DAYS_TO_COME_BACK = 3;
const DAYS_A_WEEK = 7;
const KINDS = ['cool', 'usual', 'hot'] as const;
const CM_PER_M = 100;

/** Crops whose need can be reckoned, in the order of the ledger. */
export const needModels = (facts: Facts): NeedModel[] =>
  (facts.ledger.water?.crops ?? []).flatMap((plan) => needModel(facts, plan) ?? []);

function needModel(facts: Facts, plan: CropPlan): NeedModel | null {
  const { garden, ledger } = facts;
  const { crop, growing, stages } = plan;
  const basis = ledger.bases.of([...weatherKey(facts), ...pastKeys(garden.seasons, crop.id)]);
  const station = ownStation(garden);
  if (!station || stages.length === 0) return null;
  const { can_l } = measuresOf(garden.about);
  const { soaking_day_mm } = thresholdsOf(garden.about);
  const { ground } = growing;
  const rows = stages.map((need): StageRow => {
    const figure = figuresOf(`water.${crop.id}.${need.stage}`, need, basis);
    const rain_mm = usualRain(station, need.first, need.last, soaking_day_mm);
    const weeks = need.needs.map((week) => [week.kind, weekRow(week, figure, can_l)] as const);
    return {
      stage: need.stage,
      first: need.first,
      last: need.last,
      weeks: Object.fromEntries(weeks) as StageRow['weeks'],
      rain_cans: figure('rain.cans', rain_mm === null ? null : (rain_mm * ground.root_m2) / can_l, 'cans'),
    };
  });
  const full = rows.find(({ stage }) => stage === 'middle') ?? thirstiest(rows);
  const whole = stages.find(({ stage }) => stage === full.stage) as StageNeed;
  const figure = figuresOf(`water.${crop.id}.${full.stage}`, whole, basis);
  return {
    id: crop.id,
    names: cropNames(crop, garden.about.locale),
    canopy_m2: ground.canopy_m2,
    root_m2: ground.root_m2,
    bowl_m2: ground.bowl_m2,
    depth_cm: ground.root_depth_m * CM_PER_M,
    spots: ground.spots,
    mulch: growing.mulch.kind,
    soil_known: ground.soil !== null && ground.soil.id !== 'unknown',
    years: Math.min(...stages.map(({ weeks }) => weeks.years)),
    rows,
    full,
    way_back_cans: figure('way_back_cans', (full.weeks.usual.cans.value ?? 0) / DAYS_TO_COME_BACK, 'cans'),
    drip_l_per_day: figure('drip_l_per_day', (full.weeks.hot.litres.value ?? 0) / DAYS_A_WEEK, 'l'),
  };
}

type FigureOf = (name: string, value: number | null, unit: FigureUnit) => Figure;

const figuresOf =
  (stem: string, { weeks }: StageNeed, basis: string): FigureOf =>
  (name, value, unit) =>
    reckoned({
      id: `${stem}.${name}`,
      value,
      unit,
      n: weeks.weeks,
      replicate: { kind: 'year', count: weeks.years },
      method: 'water-week',
      source: 'fao-56',
      basis,
      reason: value === null ? because('few-years') : null,
    });

function weekRow({ kind, l_per_week, bowl_days, ground_days }: WeekNeed, figure: FigureOf, can_l: number): WeekRow {
  const between = (name: string, days: WeekNeed['bowl_days']): DaysBetween | null =>
    days && {
      low: figure(`${kind}.${name}_days_low`, days.low, 'days'),
      high: figure(`${kind}.${name}_days_high`, days.high, 'days'),
    };
  return {
    litres: figure(`${kind}.l_per_week`, l_per_week, 'l'),
    cans: figure(`${kind}.cans_per_week`, l_per_week / can_l, 'cans'),
    bowl_days: between('bowl', bowl_days),
    ground_days: between('ground', ground_days),
  };
}

const thirstiest = (rows: readonly StageRow[]): StageRow =>
  rows.reduce((most, row) => ((row.weeks.hot.cans.value ?? 0) > (most.weeks.hot.cans.value ?? 0) ? row : most));

/** Every figure of a model, for the book's list. */
export const figuresOfNeed = ({ rows, way_back_cans, drip_l_per_day }: NeedModel): Figure[] => [
  ...rows.flatMap(({ weeks, rain_cans }) => [
    ...KINDS.flatMap((kind) => {
      const { litres, cans, bowl_days, ground_days } = weeks[kind];
      return [litres, cans, ...[bowl_days, ground_days].flatMap((days) => (days ? [days.low, days.high] : []))];
    }),
    rain_cans,
  ]),
  way_back_cans,
  drip_l_per_day,
];
