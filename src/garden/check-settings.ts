import type { Problem } from '../reading/problem.ts';
import { type Entry, problemIn } from '../reading/source.ts';
import type { GardenRecord } from '../records/garden.ts';
import { heatSettingsOf, thresholdsOf } from './weather-settings.ts';

/** Settings of the weather that contradict each other, a blank standing for the house's figure. */
export function checkSettings(garden: Entry<GardenRecord> | null): Problem[] {
  if (!garden) return [];
  const { thresholds, heat_units } = garden.record;
  const { base_c, cap_c } = heatSettingsOf(garden.record);
  const { wet_day_mm, soaking_day_mm, hot_day_c, cool_night_c, dry_spell_days } = thresholdsOf(garden.record);
  const wrong = (
    map: 'thresholds' | 'heat_units',
    keys: readonly string[],
    complaint: { code: string; message: string; hint: string },
  ): Problem => {
    const written = garden.record[map] as Readonly<Record<string, unknown>> | null;
    return problemIn(garden, [map, keys.find((key) => (written?.[key] ?? null) !== null) ?? ''], complaint);
  };
  return [
    ...(heat_units && cap_c <= base_c
      ? [
          wrong('heat_units', ['cap_f', 'cap_c', 'base_f', 'base_c'], {
            code: 'cap-below-base',
            message: `the cap of ${cap_c} °C is not above the base of ${base_c} °C`,
            hint: 'heat counts from the base up to the cap; the two may have changed places',
          }),
        ]
      : []),
    ...(thresholds && soaking_day_mm < wet_day_mm
      ? [
          wrong('thresholds', ['soaking_day_in', 'soaking_day_mm', 'wet_day_in', 'wet_day_mm'], {
            code: 'soaking-below-wet',
            message: `a soaking day (${soaking_day_mm} mm) would be drier than a wet one (${wet_day_mm} mm)`,
            hint: 'the two may have changed places',
          }),
        ]
      : []),
    ...(thresholds && hot_day_c <= cool_night_c
      ? [
          wrong('thresholds', ['hot_day_f', 'hot_day_c', 'cool_night_f', 'cool_night_c'], {
            code: 'hot-below-cool',
            message: `a hot day (${hot_day_c} °C) would be no warmer than a cool night (${cool_night_c} °C)`,
            hint: 'the two may have changed places',
          }),
        ]
      : []),
    ...(dry_spell_days < 2
      ? [
          wrong('thresholds', ['dry_spell_days'], {
            code: 'spell-too-short',
            message: 'a dry spell has to be two days or more',
            hint: 'write for instance 7',
          }),
        ]
      : []),
  ];
}
