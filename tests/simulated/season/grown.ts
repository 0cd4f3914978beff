import type { Chance } from '../chance.ts';
import { normal } from '../normal.ts';
import { dayOf, dayText } from './calendar.ts';
import type { Ending } from './ending.ts';
import { type FruitLife, fruitsOf } from './fruit-life.ts';
import { groundOf, seasonEffects, thisSeason } from './ground.ts';
import { follow, type Look } from './keeper.ts';
import { type Misfortune, misfortuneOf } from './misfortune.ts';
import type { Observer } from './observer.ts';
import { ripenessAt } from './ripening.ts';
import type { SeasonSetting } from './setting.ts';
import { type Storm, stormsOf } from './storm.ts';
import type { Traits } from './traits.ts';
import { trueFruit } from './true-fruit.ts';
import type { TrueVariety } from './true-variety.ts';
import type { TrueFruit, TruePickingDay, TrueSeason, TrueStorm } from './truth.ts';
import { closingOf, type Walk, walksOf } from './walk.ts';
import { heatBetween, rainBefore, type Year } from './year.ts';

/** What all seasons of a garden share. */
export interface Standing {
  readonly varieties: readonly TrueVariety[];
  readonly blocks: Readonly<Record<string, Traits>>;
  readonly observers: readonly Observer[];
}

/** One fruit with all that happened to it. */
export interface Grown {
  readonly life: FruitLife;
  /** What would befall it if nobody came first. */
  readonly misfortune: Misfortune | null;
  readonly ending: Ending;
  readonly truth: TrueFruit;
}

export interface GrownSeason {
  readonly truth: TrueSeason;
  readonly grown: readonly Grown[];
  readonly walks: readonly Walk[];
  readonly looks: readonly Look[];
  readonly dates: SeasonDates;
}

export interface SeasonDates {
  readonly starts: number;
  readonly planted: number;
  readonly ends: number;
}

export const datesOf = (year: number): SeasonDates => ({
  starts: dayOf(year, 4, 15),
  planted: dayOf(year, 5, 20),
  ends: dayOf(year, 10, 15),
});

/** A season from planting to its last walk. */
export function grownSeason(
  { year: label, design }: SeasonSetting['seasons'][number],
  year: Year,
  standing: Standing,
  setting: SeasonSetting,
  chance: Chance,
): GrownSeason {
  const { levels, keeping, sugar, slips } = setting;
  const dates = datesOf(label);
  const effects = seasonEffects(standing.varieties, levels, chance);
  const expected = Object.fromEntries(standing.varieties.map((one) => [one.id, thisSeason(one, effects)] as const));
  const mounds = groundOf(design, label, expected, standing.blocks, levels, chance);
  const closing = closingOf(year, dayOf(label, 8, 15), dates.ends);
  const storms = stormsOf(year, dates.planted, closing.day, setting.storm, chance);
  const walks = walksOf(dates.planted, closing, keeping.walking, slips.walk_skipped, standing.observers, year, chance);
  const dayEffects = new Map(walks.map(({ day }) => [day, sugar.day_sd_brix * normal(chance)] as const));
  const perils = { ...setting, aborted: setting.bearing.aborted, usual: levels.mean.log_mass };
  const lives = mounds.flatMap((mound) => {
    const ratios = standing.varieties.find(({ id }) => id === mound.variety)?.ratios;
    if (!ratios) throw new RangeError(`invalid variety: ${mound.variety}`);
    return fruitsOf(mound, ratios, dates.planted, closing.day, year, setting, chance);
  });
  const told = lives.map((life) => {
    const misfortune = misfortuneOf(life, storms, year, perils, chance);
    const { ending, looks } = follow(life, misfortune, walks, keeping, setting.signs, year, chance);
    return { life, ending, looks, misfortune, truth: trueFruit(life, ending, misfortune, dayEffects, year, sugar) };
  });
  const truth: TrueSeason = {
    slug: String(label),
    closes_on: dayText(closing.day),
    closed_by: closing.why,
    ...effects,
    varieties: expected,
    mounds,
    picking_days: pickingDays(told, dayEffects, year),
    storms: storms.map((storm) => trueStorm(storm, told, setting.storm.near, year)),
    fruits: told.map((one) => one.truth),
  };
  return { truth, grown: told, walks, looks: told.flatMap(({ looks }) => looks), dates };
}

function pickingDays(grown: readonly Grown[], effects: ReadonlyMap<number, number>, year: Year): TruePickingDay[] {
  const days = new Set(grown.flatMap(({ ending }) => (ending.fate === 'picked' ? ending.day : [])));
  return [...days]
    .sort((a, b) => a - b)
    .map((day) => ({
      date: dayText(day),
      effect_brix: effects.get(day) ?? 0,
      rain_window_mm: rainBefore(year, day),
    }));
}

function trueStorm(storm: Storm, told: readonly Grown[], near: number, year: Year): TrueStorm {
  const { first, last, rain_mm, effect } = storm;
  const atRisk = told.filter(({ life, ending, misfortune }) => {
    const on = life.set < first && ending.day > first && !(misfortune && misfortune.day < first);
    return on && ripenessAt(heatBetween(year, life.set, first), life.heats) >= near;
  });
  const split = atRisk.filter(({ misfortune }) => misfortune?.what === 'split' && misfortune.day === first);
  return {
    first_on: dayText(first),
    last_on: dayText(last),
    rain_mm,
    effect,
    at_risk: atRisk.map(({ life }) => life.id),
    split: split.map(({ life }) => life.id),
  };
}
