import { STAGES, type Stage } from '../../agronomy/crop-coefficient.ts';
import type { Garden } from '../../garden/garden.ts';
import { thresholdsOf } from '../../garden/weather-settings.ts';
import type { SpotDay, SpotWater } from './spot-water.ts';
import type { ThirstDay } from './thirst-record.ts';

/** One stage of growth of a spot, litres. */
export interface StageAccount {
  readonly stage: Stage;
  readonly days: number;
  /** Days on which it was given water. */
  readonly waterings: number;
  readonly given_l: number;
  readonly wanted_l: number;
  /** Rain on the ground that holds its roots; what ran through below them is in it. */
  readonly rain_l: number;
}

/** A spot's season of water, looked back on. */
export interface SpotAccount {
  readonly spot: string;
  readonly crop: string;
  readonly days: number;
  /** Days on which it was given water. */
  readonly waterings: number;
  readonly given_l: number;
  readonly wanted_l: number;
  readonly rain_l: number;
  /** Stages that began, in their order. */
  readonly stages: readonly StageAccount[];
  /** Days on which its plants could not drink their fill; null without a balance. */
  readonly short_days: number | null;
  /** Most days in a row without a watering or a soaking. */
  readonly longest_gap_days: number;
  /** Largest change of what its roots hold within three days; null without a balance. */
  readonly swing_l: number | null;
  /** Waterings told in a word, and reckoned in cans. */
  readonly in_words: number;
  /** Days without a word on the rain, taken as dry. */
  readonly rain_untold_days: number;
  readonly thirst: Readonly<Record<ThirstDay['how'], number>>;
  /** Keys of the records under it; the station's days aside. */
  readonly keys: readonly string[];
}

const SWING_DAYS = 3;

export function spotAccount({ about }: Pick<Garden, 'about'>, water: SpotWater): SpotAccount {
  const { days, givings, spot, crop, plantings } = water;
  const { root_m2 } = water.water.ground;
  const { soaking_day_mm } = thresholdsOf(about);
  const sum = (of: readonly SpotDay[], value: (day: SpotDay) => number): number =>
    of.reduce((total, day) => total + value(day), 0);
  const [first, last] = [days[0]?.day ?? '', days.at(-1)?.day ?? ''];
  const within = givings.filter(({ day }) => day >= first && day <= last);
  const account = (of: readonly SpotDay[]) => ({
    days: of.length,
    waterings: of.filter(({ given_l }) => given_l > 0).length,
    given_l: sum(of, ({ given_l }) => given_l),
    wanted_l: sum(of, ({ wanted_l }) => wanted_l),
    rain_l: sum(of, ({ rain }) => rain.rain_mm * root_m2),
  });
  const counted = (how: ThirstDay['how']): number => days.filter(({ thirst }) => thirst.how === how).length;
  return {
    spot: spot.id,
    crop: crop.id,
    ...account(days),
    stages: STAGES.flatMap((stage) => {
      const of = days.filter((day) => day.stage === stage);
      return of.length === 0 ? [] : [{ stage, ...account(of) }];
    }),
    short_days: hasBalance(days) ? days.filter(({ step }) => step !== null && step.ks < 1).length : null,
    longest_gap_days: longestRun(days.map(({ given_l, rain }) => given_l === 0 && rain.rain_mm < soaking_day_mm)),
    swing_l: hasBalance(days) ? largestSwing(days.flatMap(({ step }) => step?.end.root_mm ?? [])) * root_m2 : null,
    in_words: new Set(within.filter(({ told }) => told === 'word').map(({ key }) => key)).size,
    rain_untold_days: days.filter(({ rain }) => rain.told === 'not').length,
    thirst: { measured: counted('measured'), estimated: counted('estimated'), filled: counted('filled') },
    keys: [...new Set([...plantings, ...within].map(({ key }) => key))],
  };
}

const hasBalance = (days: readonly SpotDay[]): boolean => days.every(({ step }) => step !== null);

/** Most in a row for which it holds. */
function longestRun(holds: readonly boolean[]): number {
  let longest = 0;
  let run = 0;
  for (const one of holds) {
    run = one ? run + 1 : 0;
    longest = Math.max(longest, run);
  }
  return longest;
}

function largestSwing(depletions_mm: readonly number[]): number {
  return depletions_mm.reduce((largest, depletion, index) => {
    const near = depletions_mm.slice(Math.max(0, index - SWING_DAYS), index);
    return near.reduce((most, earlier) => Math.max(most, Math.abs(depletion - earlier)), largest);
  }, 0);
}
