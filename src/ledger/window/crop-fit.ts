import type { Day } from '../../day.ts';
import { because, type Reason } from '../../figure.ts';
import type { Crop, Garden, Season } from '../../garden/garden.ts';
import type { Kept } from '../../kept.ts';
import { type RipeRefusal, type RipeState, refusalOf } from '../../statistics/ripe-states/seen-fruit.ts';
import { FEWEST_YEARS, yearsAhead } from './calendar-years.ts';
import { type Clock, DAY_CLOCK, heatClock } from './clock.ts';
import { type CutFruit, cutFruits, seenFruits } from './cut-fruits.ts';
import { fitStates } from './fit-states.ts';
import type { WindowFit } from './fruit-window.ts';
import { type SettingSpan, settingSpan } from './set-from-planting.ts';
import { type WrongCalls, wrongCalls } from './wrong-calls.ts';

/** Of the cut fruits whose heat must be told for time to be counted in it. A judgement of the makers, no source. */
const MOSTLY_TOLD = 0.9;

/** What the knife has been shown of a crop, over all seasons known. */
export interface CropCuts {
  readonly crop: Crop;
  readonly clock: Clock;
  /** Why days are counted and not heat; null where heat is. */
  readonly days_because: 'no-thermometer' | 'heat-unread' | 'few-years' | null;
  readonly cut: readonly CutFruit[];
  readonly counts: Readonly<Record<RipeState, number>>;
  /** Cut fruits whose day of set only the planting tells. */
  readonly by_planting: number;
  readonly span: SettingSpan | null;
  readonly calls: WrongCalls;
  /** Why no window can be told from them. */
  readonly cannot: Reason | null;
}

/** The season a day lies in; null between seasons. */
export const seasonOn = ({ seasons }: Garden, day: Day): Season | null =>
  seasons.find(({ starts_on, ends_on }) => starts_on <= day && day <= ends_on) ?? null;

/** From the records of a garden as known on a day: nothing later may be in them. */
export function cropCuts(garden: Garden, crop: Crop, day: Day | null): CropCuts {
  const span = settingSpan(garden.seasons, crop);
  const cut = cutFruits(garden.seasons, crop, span);
  const { clock, days_because } = clockFor(garden, crop, day, cut);
  const seen = seenFruits(cut, clock);
  const refusal = refusalOf(seen);
  const count = (state: RipeState): number => seen.filter((one) => one.state === state).length;
  return {
    crop,
    clock,
    days_because,
    cut,
    counts: { U: count('U'), J: count('J'), P: count('P'), O: count('O') },
    by_planting: cut.filter(({ by }) => by === 'planting').length,
    span,
    calls: wrongCalls(garden.seasons, crop),
    cannot: refusal && reasonOf(refusal),
  };
}

/** When its fruits become ripe and are over, a second or more of reckoning; null where `cannot` says why not. */
export function cropFit({ clock, cut }: CropCuts, kept: Kept): WindowFit | null {
  const states = fitStates(seenFruits(cut, clock), kept);
  return 'cannot' in states ? null : { clock, states };
}

function clockFor(
  garden: Garden,
  crop: Crop,
  day: Day | null,
  cut: readonly CutFruit[],
): Pick<CropCuts, 'clock' | 'days_because'> {
  const heat = heatClock(garden, crop);
  if (!heat) return { clock: DAY_CLOCK, days_because: 'no-thermometer' };
  if (seenFruits(cut, heat).length < MOSTLY_TOLD * cut.length) return { clock: DAY_CLOCK, days_because: 'heat-unread' };
  const season = day && seasonOn(garden, day);
  if (day && season && season.ends_on > day && yearsAhead(heat, day, season.ends_on).length < FEWEST_YEARS)
    return { clock: DAY_CLOCK, days_because: 'few-years' };
  return { clock: heat, days_because: null };
}

function reasonOf(refusal: RipeRefusal): Reason {
  switch (refusal.code) {
    case 'few-cut':
      return because('few-cut-open', { cut: refusal.cut, wanted: refusal.need });
    case 'one-state':
      return because('one-state', { cut: refusal.cut, state: refusal.state });
    case 'no-unripe':
      return because('none-unripe', { cut: refusal.cut });
  }
}
