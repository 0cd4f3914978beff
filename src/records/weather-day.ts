import type { z } from 'zod';
import { choice } from './field/choice.ts';
import { quantity } from './field/quantity.ts';
import { record } from './field/record.ts';
import { note } from './field/text.ts';
import { exactDay } from './field/when.ts';

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
  note,
});

export type WeatherDayRecord = z.output<typeof weatherDaySchema>;
