import type { Facts } from '../../src/book/chapter.ts';
import { addDays, type Day } from '../../src/day.ts';
import type { Figure } from '../../src/figure.ts';
import { cropsOf } from '../../src/garden/crops-of.ts';
import { lastPlanted } from '../../src/garden/last-planted.ts';
import { measuresOf } from '../../src/garden/measures.ts';
import { pastKeys } from '../../src/ledger/water/stage-keys.ts';
import type { TankFacts } from '../../src/ledger/water/tank-facts.ts';
import type { TankPlan } from '../../src/ledger/water/tank-plan.ts';
import type { Afford } from '../../src/ledger/water/tank-replay.ts';
import type { WaterLedger } from '../../src/ledger/water/water-ledger.ts';
import { figureOf } from './tank-figure.ts';
import { tankWaterings } from './tank-waterings.ts';
import { weatherKey } from './weather-key.ts';

/** Whether the tank lasts, as past years tell it. */
export interface PlanModel {
  readonly first: Day;
  readonly last: Day;
  readonly start: Figure;
  readonly start_from: TankPlan['start_from'];
  readonly wanted: Figure;
  readonly wanted_cans: Figure;
  /** Days of the average want that a full tank has; null where nothing is wanted. */
  readonly lasts: Figure | null;
  /** Past years that ran dry, of so many. */
  readonly dry: Figure;
  readonly of: number;
  /** First days without water, in the year of the plan; null where no year ran dry. */
  readonly soonest: Day | null;
  readonly latest: Day | null;
  /** The same with a fifth more wanted. */
  readonly thirstier: Figure;
  /** `stands`: nothing need be given up; `less`: so much a week; `too-much`: no cut that leaves half would do. */
  readonly cut: 'stands' | 'less' | 'too-much';
  /** Null unless the cut is `less`. */
  readonly less: { readonly litres: Figure; readonly cans: Figure; readonly dry: Figure } | null;
}

/** A plan cut by more than this is no longer the plan: a judgement, no source. */
const LEAST_LEFT = 1 / 2;
const DAYS_A_WEEK = 7;

export function planModel(facts: Facts, water: WaterLedger, { tank }: TankFacts, plan: TankPlan): PlanModel {
  const { replay, thirstier, afford, wanted_l_week, first } = plan;
  const { can_l } = measuresOf(facts.garden.about);
  const basis = facts.ledger.bases.of(planKeys(facts, water, plan));
  const figure = figureOf(basis, 'tank-replay', 'fewkes-butler-2000', replay.of);
  const dry_days = replay.years.flatMap(({ dry_day }) => dry_day ?? []);
  const dayOf = (place: number): Day | null => (dry_days.length === 0 ? null : addDays(first, place));
  const cut = cutOf(afford);
  return {
    first,
    last: plan.last,
    start: figure('start_l', plan.start_l, 'l'),
    start_from: plan.start_from,
    wanted: figure('wanted_l_per_week', wanted_l_week, 'l_per_week'),
    wanted_cans: figure('wanted_cans_per_week', wanted_l_week / can_l, 'cans'),
    lasts:
      wanted_l_week > 0
        ? figure('lasts_days', ((tank.holds_l - tank.dead_l) * DAYS_A_WEEK) / wanted_l_week, 'days')
        : null,
    dry: figure('dry_years', replay.dry, 'years'),
    of: replay.of,
    soonest: dayOf(Math.min(...dry_days)),
    latest: dayOf(Math.max(...dry_days)),
    thirstier: figure('dry_years_with_a_fifth_more', thirstier.dry, 'years'),
    cut,
    less:
      afford && cut === 'less'
        ? {
            litres: figure('less_l_per_week', afford.less_l_week, 'l_per_week'),
            cans: figure('less_cans_per_week', afford.less_l_week / can_l, 'cans'),
            dry: figure('dry_years_with_less', afford.dry, 'years'),
          }
        : null,
  };
}

function cutOf(afford: Afford | null): PlanModel['cut'] {
  if (afford === null) return 'too-much';
  const { less_l_week, wanted_l_week } = afford;
  if (less_l_week === 0) return 'stands';
  return wanted_l_week - less_l_week < LEAST_LEFT * wanted_l_week ? 'too-much' : 'less';
}

/** The station's record, the last planting, the waterings that tell which of its spots the tank serves, and the dip it starts from. */
function planKeys(facts: Facts, { seasons }: WaterLedger, { start_from }: TankPlan): string[] {
  const { garden } = facts;
  const drew = garden.seasons.findLast((season) => tankWaterings(garden, season).length > 0);
  const dip = start_from === 'dip' ? seasons.at(-1)?.dips?.dips.at(-1) : undefined;
  return [
    ...weatherKey(facts),
    ...(lastPlanted(garden)?.plantings ?? []).map(({ key }) => key),
    ...cropsOf(garden.varieties).flatMap(({ id }) => pastKeys(garden.seasons, id)),
    ...(drew ? tankWaterings(garden, drew) : []),
    ...(dip ? [dip.key] : []),
  ];
}
