import { PLAIN } from './plain-setting.ts';
import type { SeasonSetting } from './setting.ts';
import { NO_SLIPS } from './slips.ts';

const BLOCKS = { blocks: ['ABCD', 'ABCD', 'ABCD'] };
const THREE_SEASONS = [2023, 2024, 2025].map((year) => ({ year, design: BLOCKS }));

const BLOCKED: SeasonSetting = { ...PLAIN, name: '3 seasons in blocks', model: 'right', seasons: THREE_SEASONS };

const DARING: SeasonSetting['keeping'] = {
  ...PLAIN.keeping,
  walking: { ...PLAIN.keeping.walking, forecast: { from_mm: 8, accuracy: 0.85, says: 0.1, heed: 1, daring: 0.2 } },
};

/** Gardens under which whatever reads sugar, ripeness, splits and harvest times is judged. */
export const SEASON_SETTINGS: readonly SeasonSetting[] = [
  BLOCKED,
  {
    ...BLOCKED,
    name: '3 seasons, rain dilutes nothing',
    sugar: { ...PLAIN.sugar, dilution_brix_per_mm: 0 },
  },
  {
    ...PLAIN,
    name: '1 season without blocks',
    model: 'right',
    seasons: [{ year: 2025, design: { unblocked: 'AAABBBCCCC' } }],
    baskets: true,
  },
  {
    ...PLAIN,
    name: '1 season after 20 years of weather, read in the morning',
    model: 'right',
    seasons: [{ year: 2025, design: BLOCKS }],
    earlier_years: 20,
    read: 'morning',
  },
  {
    ...PLAIN,
    name: '2 seasons of few mounds, much left unwritten',
    model: 'right',
    seasons: [
      { year: 2024, design: { unblocked: 'AABB' } },
      { year: 2025, design: { unblocked: 'AABBC' } },
    ],
    slips: {
      ...NO_SLIPS,
      walk_skipped: 0.15,
      weather_day_missing: 0.04,
      set_missing: 0.3,
      set_about: 0.4,
      mass_missing: 0.2,
      mass_in_lb: 0.3,
      condition_missing: 0.15,
      uncut: 0.2,
      state_missing: 0.1,
      state_misread: 0.05,
      brix_missing: 0.3,
      word_missing: 0.25,
      sign_missing: 0.25,
      written_late: 0.2,
    },
  },
  {
    ...BLOCKED,
    name: 'heavy-tailed sugar, skewed sizes',
    model: 'broken',
    levels: { ...PLAIN.levels, fruit_shape: { brix: 'student', log_mass: 'skewed' } },
  },
  {
    ...BLOCKED,
    name: 'skewed sugar, unlike picking days',
    model: 'broken',
    levels: { ...PLAIN.levels, fruit_shape: { brix: 'left-skewed', log_mass: 'normal' } },
    sugar: { ...PLAIN.sugar, day_sd_brix: 0.7 },
  },
  { ...BLOCKED, name: 'picked early before rain', model: 'broken', keeping: DARING },
  {
    ...BLOCKED,
    name: 'picked early before rain, rain dilutes nothing',
    model: 'broken',
    keeping: DARING,
    sugar: { ...PLAIN.sugar, dilution_brix_per_mm: 0 },
  },
  {
    ...BLOCKED,
    name: 'varieties change with the season',
    model: 'broken',
    levels: { ...PLAIN.levels, variety_by_season: { brix: 1, log_mass: 0.2, log_heat: 0.06 } },
  },
];

/** The setting of a name. Throws RangeError for one there is not. */
export function settingNamed(name: string): SeasonSetting {
  const found = SEASON_SETTINGS.find((setting) => setting.name === name);
  if (!found) throw new RangeError(`invalid setting: ${name}`);
  return found;
}
