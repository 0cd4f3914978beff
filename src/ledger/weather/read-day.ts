import type { WeatherDay } from '../../garden/garden.ts';

/** A day of a window as a strip draws it, in SI; null where nobody read. A word for the rain is no number, but not nothing. */
export const readDay = (day: WeatherDay | null) => ({
  tmin_c: day?.tmin_c ?? null,
  tmax_c: day?.tmax_c ?? null,
  rain_mm: day?.rain_mm ?? null,
  rain_unknown: day === null || (day.rain_mm === null && day.rain === null),
});
