import type { Interval } from '../../src/figure.ts';
import {
  type GrowingFruit,
  type Outgrown,
  type RipeWindow,
  ripeWindow,
} from '../../src/statistics/ripe-states/remaining-time.ts';
import { WEAK_RIPE_PRIORS } from '../../src/statistics/ripe-states/ripe-priors.ts';
import { type RipeStates, ripeStates } from '../../src/statistics/ripe-states/ripe-states.ts';
import type { Judged } from './judged-garden.ts';
import { type CutPlan, cutGarden, type HangingFruit } from './ripe-window-garden.ts';
import { knownStates, likeliestStates } from './ripe-window-plug-in.ts';

/** Truths and draws must not come from one stream. */
const OTHER_STREAM = 1_000_000;

export const FIGURES = ['ripe, 90', 'ripe, 50', 'over, 90', 'unseen variety, 90', 'plug-in, 90'] as const;

/** Windows of the hanging fruits of a garden beside what came; null where the cuts were too few. */
export type JudgedWindows = Readonly<Record<(typeof FIGURES)[number], readonly Judged[]>>;

/** Yardstick of width: the window of one who knows the variety's mean, the spread of its fruits and both widths. */
export function judgedWindows(plan: CutPlan, seed: number, draws: number, plug_in = true): JudgedWindows | null {
  const { cut, hanging, stages } = cutGarden(plan, seed);
  const call_wrong = plan.call?.wrong ?? null;
  const states = ripeStates(cut, WEAK_RIPE_PRIORS, { seed: seed + OTHER_STREAM, draws, call_wrong });
  if ('cannot' in states) return null;
  const windowsOf = (from: RipeStates, fruits: readonly GrowingFruit[]): (RipeWindow | Outgrown)[] =>
    fruits.map((fruit) => ripeWindow(from, fruit, []));
  const fruits = hanging.map(({ fruit }) => fruit);
  const oracle = hanging.map(({ fruit, middle }) =>
    ripeWindow(knownStates(stages, new Map([[fruit.variety ?? '', middle]])), fruit, []),
  );
  const own = windowsOf(states, fruits);
  const unseen = windowsOf(
    states,
    fruits.map((fruit) => ({ ...fruit, variety: null })),
  );
  const plugged = plug_in ? windowsOf(likeliestStates(cut), fruits) : [];
  const judged = (
    windows: readonly (RipeWindow | Outgrown)[],
    interval: (window: RipeWindow) => Interval | null,
    truth: (one: HangingFruit) => number,
  ): Judged[] =>
    hanging.flatMap((one, at) => {
      const [found, known] = [windows[at], oracle[at]];
      if (!found || !known || 'cannot' in known) return [];
      const yardstick = interval(known);
      return [
        {
          of: one.fruit.variety ?? '',
          interval: 'cannot' in found ? null : interval(found),
          truth: truth(one),
          oracle_width: yardstick ? yardstick.high - yardstick.low : 0,
        },
      ];
    });
  const most = ({ to_just }: RipeWindow): Interval => to_just.most;
  const to_just = (one: HangingFruit): number => one.to_just;
  return {
    'ripe, 90': judged(own, most, to_just),
    'ripe, 50': judged(own, (window) => window.to_just.half, to_just),
    'over, 90': judged(
      own,
      ({ to_over }) => ('cannot' in to_over ? null : to_over.most),
      (one) => one.to_over,
    ),
    'unseen variety, 90': judged(unseen, most, to_just),
    'plug-in, 90': judged(plugged, most, to_just),
  };
}
