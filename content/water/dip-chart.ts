import { heightOf, litresAtDepth, type TankShape } from '../../src/agronomy/tank-shape.ts';
import { cautionsAt } from '../../src/book/cautions-at.ts';
import type { Facts } from '../../src/book/chapter.ts';
import type { Page } from '../../src/book/page.ts';
import { column, type Table } from '../../src/book/table.ts';
import { measuresOf } from '../../src/garden/measures.ts';
import { type TankFacts, tankFacts } from '../../src/ledger/water/tank-facts.ts';

/** A chart to hang beside the tank: what the stick says, in litres and in cans. */
export interface DipChartModel {
  readonly sheet: { readonly title: string; readonly rule: string; readonly landscape: false };
  /** Tanks alike, joined below; litres are of all of them together. */
  readonly count: number;
  readonly can_l: number;
  readonly can_measured: boolean;
  /** Null where the measures of the tank are not known, and the chart is made by filling it. */
  readonly known: KnownChart | null;
  readonly blank: BlankChart | null;
}

interface KnownChart {
  /** From the brim down. */
  readonly rows: readonly DipRow[];
  /** Litres of a centimetre or an inch more; null for a drum on its side, which widens and narrows. */
  readonly one_more_l: number | null;
  readonly drawing: Drawing;
}

interface DipRow {
  readonly depth_cm: number;
  /** All that is in the tank. */
  readonly litres: number;
  /** Whole cans that can still be drawn. */
  readonly cans: number;
  readonly at: 'full' | 'tap' | null;
  readonly under_tap: boolean;
}

/** In a picture of 100 by 110 whose tank reaches from 10 down to 100. */
interface Drawing {
  readonly kind: TankShape['kind'];
  /** Null where nobody measured the tap. */
  readonly tap_y: number | null;
}

interface BlankChart {
  readonly rows: readonly { readonly cans: number; readonly litres: number }[];
}

const UNIT_CM = { metric: 1, us: 2.54 } as const;
const STEPS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000];
/** Lines of type that can be read from the door, on one side. */
const MOST_ROWS = 28;
/** Lines to write on. */
const MOST_BLANK_ROWS = 15;
const BLANK_STEP_CANS = 5;
const TOP = 10;
const FLOOR = 100;
/** Nearer to each other than this part of a step, two depths are one. */
const ALIKE = 0.05;

/** Null for a garden without a tank. */
export function dipChartPage(facts: Facts): Page | null {
  const { garden, reference } = facts;
  if (!garden.about.tank) return null;
  const tank = tankFacts(garden, reference.roofs);
  const known = tank?.shape ? knownChart(facts, tank, tank.shape) : null;
  const { can_l, can_measured } = measuresOf(garden.about);
  const title = 'What the stick says: the tank’s dip chart';
  const rule = known
    ? 'Stand a dry stick upright on the floor of the tank. Read where it is wet, and find that line here.'
    : 'Nobody wrote down the measures of this tank. Make its chart once, when it is empty.';
  const model: DipChartModel = {
    sheet: { title, rule, landscape: false },
    count: garden.about.tank.count ?? 1,
    can_l,
    can_measured,
    known,
    blank: known ? null : blankChart(tank?.tank.holds_l ?? null, can_l),
  };
  return {
    path: 'sheets/dip-chart/',
    chapter: 'water',
    template: 'water/dip-chart.njk',
    title,
    finding: null,
    level: null,
    model,
    charts: [],
    tables: known ? [dipChartTable(known)] : [],
    figures: [],
    cautions: cautionsAt(reference, 'tank'),
    listed: false,
    form: 'sheet',
  };
}

function knownChart({ garden: { about } }: Facts, { tank, count }: TankFacts, shape: TankShape): KnownChart {
  const { can_l } = measuresOf(about);
  const unit_cm = UNIT_CM[about.units];
  const height_cm = heightOf(shape);
  const step_cm = stepFor(height_cm / unit_cm, MOST_ROWS) * unit_cm;
  const tap_cm = about.tank?.tap_cm ?? null;
  const marked = [height_cm, ...(tap_cm !== null && tap_cm > 0 ? [tap_cm] : [])];
  const whole = Array.from({ length: Math.floor(height_cm / step_cm) }, (_, index) => (index + 1) * step_cm);
  const depths = [
    ...marked,
    ...whole.filter((depth) => marked.every((mark) => Math.abs(depth - mark) > ALIKE * step_cm)),
  ].sort((a, b) => b - a);
  return {
    rows: depths.map((depth_cm) => {
      const litres = litresAtDepth(shape, depth_cm) * count;
      return {
        depth_cm,
        litres,
        cans: Math.max(0, wholeCans(litres - tank.dead_l, can_l)),
        at: depth_cm === height_cm ? 'full' : depth_cm === tap_cm ? 'tap' : null,
        under_tap: tap_cm !== null && depth_cm < tap_cm,
      };
    }),
    one_more_l: shape.kind === 'lying' ? null : litresAtDepth(shape, Math.min(unit_cm, height_cm)) * count,
    drawing: {
      kind: shape.kind,
      tap_y: tap_cm === null ? null : FLOOR - ((FLOOR - TOP) * tap_cm) / height_cm,
    },
  };
}

/** A can that is full but for the arithmetic’s last digit is full. */
const wholeCans = (litres: number, can_l: number): number => Math.floor(litres / can_l + 1e-9);

/** Cans poured into the empty tank, in steps that fill a side; without its size, as many steps as there are lines. */
function blankChart(holds_l: number | null, can_l: number): BlankChart {
  const all = holds_l === null ? null : Math.max(1, Math.ceil(holds_l / can_l));
  const step = all === null ? BLANK_STEP_CANS : stepFor(all, MOST_BLANK_ROWS);
  const rows = all === null ? MOST_BLANK_ROWS : Math.ceil(all / step);
  return {
    rows: Array.from({ length: rows }, (_, index) => ({
      cans: (index + 1) * step,
      litres: (index + 1) * step * can_l,
    })),
  };
}

/** The smallest step that needs no more than so many lines. */
const stepFor = (all: number, most: number): number =>
  STEPS.find((step) => all / step <= most) ?? (STEPS.at(-1) as number);

const dipChartTable = ({ rows }: KnownChart): Table => ({
  id: 'tank-dip-chart',
  title: 'Depth on the stick, and what is in the tank',
  columns: [
    column('depth_cm', 'Depth', 'cm'),
    column('litres_l', 'In the tank', 'l'),
    column('cans', 'Whole cans that can be drawn', 'cans'),
  ],
  rows: rows.map(({ depth_cm, litres, cans }) => [depth_cm, litres, cans]),
});
