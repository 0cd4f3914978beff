import type { WeatherDay } from '../../garden/garden.ts';

/** Rain of a day as far as somebody told it. */
export interface RainDay {
  /** 0 where nobody looked: a day without a word is taken as dry, and counted. */
  readonly rain_mm: number;
  readonly told: 'gauge' | 'words' | 'not';
}

/** “Some” rain, mm: a judgement, no source. “Soaking” is the garden's own threshold. */
const SOME_MM = 5;

export function rainDay(day: Pick<WeatherDay, 'rain_mm' | 'rain'> | null, soaking_mm: number): RainDay {
  if (day !== null && day.rain_mm !== null) return { rain_mm: day.rain_mm, told: 'gauge' };
  if (day === null || day.rain === null) return { rain_mm: 0, told: 'not' };
  return { rain_mm: { none: 0, some: SOME_MM, soaking: soaking_mm }[day.rain], told: 'words' };
}
