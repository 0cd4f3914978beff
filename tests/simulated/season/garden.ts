import { type Chance, chanceOf } from '../chance.ts';
import { initialsOf } from '../design.ts';
import type { Texts } from '../garden-texts.ts';
import { basketsText } from './baskets.ts';
import { dayText } from './calendar.ts';
import { type GrownSeason, grownSeason, type Standing } from './grown.ts';
import { observersOf } from './observer.ts';
import { registerText } from './register.ts';
import type { SeasonSetting } from './setting.ts';
import { gardenTexts, plantedTexts, STATION } from './texts.ts';
import { drawn } from './traits.ts';
import { trueVariety } from './true-variety.ts';
import type { SeasonTruth, TrueDay } from './truth.ts';
import { visitsText } from './visits.ts';
import { weatherOf } from './weather.ts';
import { weatherText } from './weather-text.ts';
import { dailyHeat, type Year, yearOf } from './year.ts';

/** The records of a whole garden as its keepers might have written them, and beside them all that is true. */
export interface SeasonGarden {
  readonly texts: Texts;
  readonly truth: SeasonTruth;
}

/** The garden of a seed: the same seed writes the same bytes. */
export function seasonGarden(setting: SeasonSetting, seed: number): SeasonGarden {
  const chance = chanceOf(seed);
  const standing = standingOf(setting, chance);
  const years = yearsOf(setting, chance);
  const seasons = setting.seasons.map((season) => {
    const year = years.get(season.year);
    if (!year) throw new RangeError(`invalid season: ${season.year} has no weather`);
    const grown = grownSeason(season, year, standing, setting, chance);
    return { grown, texts: seasonTexts(grown, year, setting, chance) };
  });
  const days = [...years.values()].map((year) => year.days);
  const mounds = seasons.flatMap(({ grown }) => grown.truth.mounds);
  return {
    texts: {
      ...gardenTexts(standing.varieties, mounds, setting.read),
      [`weather/${STATION}.csv`]: weatherText(days, setting.read, setting.slips, chance),
      ...Object.assign({}, ...seasons.map(({ texts }) => texts)),
    },
    truth: {
      dilution_brix_per_mm: setting.sugar.dilution_brix_per_mm,
      day_sd_brix: setting.sugar.day_sd_brix,
      ...standing,
      seasons: seasons.map(({ grown }) => grown.truth),
      weather: trueDays(years, setting.ripening.base_c),
    },
  };
}

function standingOf({ seasons, levels, ripening, keeping }: SeasonSetting, chance: Chance): Standing {
  const initials = [...new Set(seasons.flatMap(({ design }) => initialsOf(design)))].sort();
  const most = Math.max(...seasons.map(({ design }) => ('blocks' in design ? design.blocks.length : 0)));
  return {
    varieties: initials.map((initial) => trueVariety(initial, levels, ripening, chance)),
    blocks: Object.fromEntries(
      Array.from({ length: most }, (_, index) => [`B${index + 1}`, drawn(levels.block, chance)] as const),
    ),
    observers: observersOf(keeping.calling, chance),
  };
}

/** The weather of all years from the earliest kept to the last season, by year. */
function yearsOf({ seasons, earlier_years, climate, ripening }: SeasonSetting, chance: Chance): Map<number, Year> {
  const labels = seasons.map(({ year }) => year);
  const first = Math.min(...labels) - earlier_years;
  const count = Math.max(...labels) - first + 1;
  return new Map(
    Array.from({ length: count }, (_, index) => [
      first + index,
      yearOf(weatherOf(first + index, climate, chance), ripening.base_c),
    ]),
  );
}

function seasonTexts(grown: GrownSeason, year: Year, setting: SeasonSetting, chance: Chance): Texts {
  const folder = `seasons/${grown.truth.slug}`;
  const { slips, sugar, baskets } = setting;
  return {
    ...plantedTexts(grown),
    [`${folder}/fruits.yaml`]: registerText(grown.grown, sugar.reading_sd_brix, slips, year, chance),
    [`${folder}/visits.yaml`]: visitsText(grown, slips, chance),
    ...(baskets && { [`${folder}/pickings.yaml`]: basketsText(grown.grown) }),
  };
}

const trueDays = (years: ReadonlyMap<number, Year>, base_c: number): TrueDay[] =>
  [...years.values()].flatMap(({ days }) =>
    days.map((day) => ({
      date: dayText(day.day),
      rain_mm: day.rain_mm,
      tmax_c: day.tmax_c,
      tmin_c: day.tmin_c,
      heat: dailyHeat(day, base_c),
    })),
  );
