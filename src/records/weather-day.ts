import type { z } from 'zod';
import { amount } from './field/amount.ts';
import { choice } from './field/choice.ts';
import { quantity } from './field/quantity.ts';
import { record } from './field/record.ts';
import { note } from './field/text.ts';
import { exactDay } from './field/when.ts';

const share = (title: string) => amount({ min: 0, max: 100, about: false }).meta({ title });

/** One day at one station. Blank is missing, 0 is none, `trace` is wet but under the gauge's mark. */
export const weatherDaySchema = record({
  date: exactDay({ title: 'Date' }),
  ...quantity('rain')('rain', { min: 0, max: 2000 }, { title: 'Rain', trace: true, about: false }),
  rain: choice(['none', 'some', 'soaking'], {
    title: 'Rain in words',
    description: 'For a garden without a gauge.',
  }).optional(),
  ...quantity('temperature')('tmax', { min: -60, max: 60 }, { title: 'Highest', about: false }),
  ...quantity('temperature')('tmin', { min: -60, max: 60 }, { title: 'Lowest', about: false }),
  ...quantity('temperature')('dew', { min: -60, max: 40 }, { title: 'Dew point', about: false }),
  rh_max_pct: share('Dampest air, of a hundred').optional(),
  rh_min_pct: share('Driest air, of a hundred').optional(),
  ...quantity('speed')('wind', { min: 0, max: 60 }, { title: 'Wind, mean of the day', about: false }),
  sun_h: amount({ min: 0, max: 24, about: false }).meta({ title: 'Hours of sun' }).optional(),
  solar_mj_m2: amount({ min: 0, max: 45, about: false }).meta({ title: 'Sun’s energy, MJ/m²' }).optional(),
  note,
});

export type WeatherDayRecord = z.output<typeof weatherDaySchema>;
