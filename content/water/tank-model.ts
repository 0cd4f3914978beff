import { emptyFlush, type Roof, roofDay } from '../../src/agronomy/roof-runoff.ts';
import { hoursToEmpty, minutesFor } from '../../src/agronomy/tap.ts';
import type { Facts } from '../../src/book/chapter.ts';
import { shortCites } from '../../src/book/cites.ts';
import type { Figure } from '../../src/figure.ts';
import { measuresOf } from '../../src/garden/measures.ts';
import type { TankFacts } from '../../src/ledger/water/tank-facts.ts';
import type { TankPlan } from '../../src/ledger/water/tank-plan.ts';
import type { WaterLedger } from '../../src/ledger/water/water-ledger.ts';
import { type TankDrawing, tankDrawing } from './tank-charts.ts';
import { type DipsModel, dipsModel } from './tank-dips-model.ts';
import { figureOf } from './tank-figure.ts';
import { type PlanModel, planModel } from './tank-plan-model.ts';

/** The garden's tank: what it holds, whether it lasts, and how far the reckoning can be trusted. */
export interface TankModel {
  readonly count: number;
  readonly holds: Figure;
  /** Null where the tap draws the last drop, or nobody measured how high it sits. */
  readonly below_tap: Figure | null;
  readonly roof: RoofModel | null;
  readonly plan: PlanModel | null;
  /** The first thing a plan lacks; null with one. */
  readonly lacks: 'roof' | 'thermometer' | 'crops' | 'soil' | 'years' | null;
  /** Null where nobody measured the flow. */
  readonly tap: TapModel | null;
  readonly dips: DipsModel | null;
  /** Null where no chart is drawn. */
  readonly chart: TankDrawing | null;
}

interface RoofModel {
  /** A rain as people speak of it. */
  readonly rain_mm: number;
  /** Litres it brings after a dry day, by the least and the most that sources give for such a roof. */
  readonly low: Figure;
  readonly high: Figure;
  readonly first_flush_l: number;
  readonly cites: readonly string[];
}

interface TapModel {
  /** Until nothing more comes out, at the soonest; in hours, or in minutes where it is less than two. */
  readonly full: Figure;
  /** The same from the level of the day of the book; null unless a dip of this season tells it. */
  readonly today: Figure | null;
  readonly can: Figure;
}

const SHORT_HOURS = 2;
const MINUTES = 60;
const RAIN_MM = { metric: 10, us: 25.4 } as const;

/** Null for a garden without a tank, or with one of unknown size. */
export function tankModel(facts: Facts): TankModel | null {
  const { water } = facts.ledger;
  if (!water?.tank) return null;
  const { tank, tank_plan } = water;
  const { bases } = facts.ledger;
  const nothing = bases.of([]);
  const measure = figureOf(nothing, 'tank-replay', null);
  return {
    count: tank.count,
    holds: measure('holds_l', tank.tank.holds_l, 'l'),
    below_tap: tank.tank.dead_l > 0 ? measure('below_tap_l', tank.tank.dead_l, 'l') : null,
    roof: roofModel(facts, tank, nothing),
    plan: tank_plan && planModel(facts, water, tank, tank_plan),
    lacks: tank_plan ? null : lackingOf(water),
    tap: tapModel(facts, tank, tank_plan, nothing),
    dips: dipsModel(facts, water),
    chart: tankDrawing(facts),
  };
}

function roofModel(
  { garden: { about }, reference }: Facts,
  { roof, roof_facts }: TankFacts,
  basis: string,
): RoofModel | null {
  if (!roof || !roof_facts) return null;
  const rain_mm = RAIN_MM[about.units];
  const figure = figureOf(basis, 'roof-water', 'enhealth-tanks');
  const brought = (runoff_share: number): number => {
    const one: Roof = { ...roof, runoff_share };
    return roofDay(one, rain_mm, emptyFlush(one)).inflow_l;
  };
  return {
    rain_mm,
    low: figure('off_roof_low_l', brought(roof_facts.runoff_low), 'l'),
    high: figure('off_roof_high_l', brought(roof_facts.runoff_high), 'l'),
    first_flush_l: roof.first_flush_l,
    cites: shortCites(reference, roof_facts.sources),
  };
}

function lackingOf({ thirst, tank, crops }: WaterLedger): Exclude<TankModel['lacks'], null> {
  if (!tank?.roof) return 'roof';
  if (!thirst) return 'thermometer';
  if (crops.length === 0) return 'crops';
  return crops.some(({ growing }) => growing.ground.available_mm === null) ? 'soil' : 'years';
}

function tapModel(
  { garden }: Facts,
  { tank, flow_l_min }: TankFacts,
  plan: TankPlan | null,
  basis: string,
): TapModel | null {
  if (flow_l_min === null) return null;
  const { can_l } = measuresOf(garden.about);
  const figure = figureOf(basis, 'tank-replay', null);
  const spent = (name: string, level_l: number): Figure => {
    const hours = hoursToEmpty({ level_l, dead_l: tank.dead_l, flow_l_min });
    return hours < SHORT_HOURS
      ? figure(`${name}_minutes`, hours * MINUTES, 'minutes')
      : figure(`${name}_hours`, hours, 'hours');
  };
  return {
    full: spent('tap_empties_full', tank.holds_l),
    today: plan?.start_from === 'dip' ? spent('tap_empties_today', plan.start_l) : null,
    can: figure('tap_fills_can_minutes', minutesFor({ amount_l: can_l, flow_l_min }), 'minutes'),
  };
}

/** Every figure of a model, for the book's list. */
export const figuresOfTank = ({ holds, below_tap, roof, plan, tap, dips }: TankModel): Figure[] =>
  [
    holds,
    below_tap,
    roof?.low,
    roof?.high,
    plan?.start,
    plan?.wanted,
    plan?.wanted_cans,
    plan?.lasts,
    plan?.dry,
    plan?.thirstier,
    plan?.less?.litres,
    plan?.less?.cans,
    plan?.less?.dry,
    tap?.full,
    tap?.today,
    tap?.can,
    dips?.bias,
    dips?.widest,
  ].flatMap((figure) => figure ?? []);
