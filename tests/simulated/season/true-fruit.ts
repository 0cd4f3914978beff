import { dayText } from './calendar.ts';
import type { Ending, Picked } from './ending.ts';
import { type FruitLife, massAt } from './fruit-life.ts';
import type { Misfortune } from './misfortune.ts';
import { type Stages, stateAt } from './ripening.ts';
import { LEAST_BRIX, ripenessBrix, type Sugar } from './sugar.ts';
import type { TrueFruit, TruePick } from './truth.ts';
import { heatBetween, rainBefore, type Year } from './year.ts';

/** The sugar effect of each picking day, by day. */
export type DayEffects = ReadonlyMap<number, number>;

export function trueFruit(
  life: FruitLife,
  ending: Ending,
  misfortune: Misfortune | null,
  effects: DayEffects,
  year: Year,
  sugar: Sugar,
): TrueFruit {
  const { id, planting, variety, plant, traits, heats, turns, latents } = life;
  const befell = misfortune && misfortune.day < ending.day ? misfortune : null;
  return {
    id,
    planting,
    variety,
    plant,
    set_on: dayText(life.set),
    traits,
    heats,
    turned_on: written(turns),
    latents,
    fate: ending.fate,
    lost_to: ending.fate === 'picked' ? null : ending.lost_to,
    befell: befell && { what: befell.what, on: dayText(befell.day) },
    ended_on: dayText(ending.day),
    pick: ending.fate === 'picked' ? truePick(life, ending, effects, year, sugar) : null,
  };
}

function truePick(life: FruitLife, ending: Picked, effects: DayEffects, year: Year, sugar: Sugar): TruePick {
  const heat = heatBetween(year, life.set, ending.day);
  const rain_window_mm = rainBefore(year, ending.day);
  const ripeness_brix = ripenessBrix(heat, life.heats, sugar);
  const day_effect_brix = effects.get(ending.day) ?? 0;
  const dilution_brix = -sugar.dilution_brix_per_mm * rain_window_mm;
  return {
    picked_on: dayText(ending.day),
    reason: ending.reason,
    by_lot: ending.by_lot,
    condition: ending.condition,
    heat,
    state: stateAt(heat, life.heats),
    kg: massAt(heat, life),
    brix: Math.max(LEAST_BRIX, life.traits.brix + ripeness_brix + day_effect_brix + dilution_brix),
    ripeness_brix,
    day_effect_brix,
    rain_window_mm,
    dilution_brix,
  };
}

const written = ({ just_ripe, prime, over }: Stages<number | null>): Stages<string | null> => ({
  just_ripe: text(just_ripe),
  prime: text(prime),
  over: text(over),
});

const text = (day: number | null): string | null => (day === null ? null : dayText(day));
