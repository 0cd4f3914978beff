import type { Facts } from '../../src/book/chapter.ts';
import type { Chart } from '../../src/book/chart.ts';
import { tankBand } from '../../src/charts/tank-band.ts';
import type { DippedDay } from '../../src/ledger/water/dip-account.ts';
import type { TankPlan } from '../../src/ledger/water/tank-plan.ts';
import { levelsTable } from './tank-tables.ts';

const ID = 'tank-levels';

/** What a page needs to know of the chart to print it. */
export interface TankDrawing {
  readonly id: string;
  /** It holds dips of the season that runs. */
  readonly dipped: boolean;
}

/** Only a community's book has room for the chart; null without a plan too. */
export function tankDrawing(facts: Facts): TankDrawing | null {
  const plan = facts.ledger.water?.tank_plan;
  if (facts.garden.about.edition !== 'community' || !plan) return null;
  return { id: ID, dipped: dipsSoFar(facts, plan).length > 0 };
}

/** Litres in the tank over past years, with the dips of the season that runs; null where none is drawn. */
export function tankChart(facts: Facts): Chart | null {
  const { water } = facts.ledger;
  const drawing = tankDrawing(facts);
  if (!water?.tank || !water.tank_plan || !drawing) return null;
  const { tank } = water.tank;
  const { first, last, band, start_l, replay } = water.tank_plan;
  const { format } = facts;
  return {
    id: drawing.id,
    title: 'Water in the tank, as past years would have left it',
    description: `From ${format.day(first)} with ${format.amount(start_l, 'l')} to ${format.day(last)}, over ${replay.of} past years; the plan ran the tank dry in ${replay.dry} of them.`,
    spec: tankBand(
      {
        first,
        levels: band,
        dips: dipsSoFar(facts, water.tank_plan).map(({ day, litres }) => ({ on: day, litres })),
        holds_l: tank.holds_l,
        below_tap_l: tank.dead_l,
      },
      format,
    ),
    table: levelsTable(water.tank_plan),
  };
}

/** Dips of the season the plan is for, once it has begun: those of a season that is over say nothing of the level now. */
function dipsSoFar({ ledger }: Facts, { first }: TankPlan): readonly DippedDay[] {
  const latest = ledger.water?.seasons.at(-1);
  return latest && first <= latest.season.ends_on ? (latest.dips?.dips ?? []) : [];
}
