import type { CalendarEvent } from '../../src/book/calendar-event.ts';
import type { WhenLine } from '../../src/book/when-line.ts';

/** Dated steps of a crop's year, for the calendar file; `year` tells one year's from the next. */
export const eventsOf = (crop_id: string, year: string, lines: readonly WhenLine[]): CalendarEvent[] =>
  lines.flatMap(({ step, crops, first, last, basis, count }) =>
    first && last
      ? [
          {
            id: `${year.replace('/', '-')}-${crop_id.toLowerCase()}-${step}`,
            summary: { code: `calendar.${step}`, values: { crops } },
            description: { code: `when.${basis}`, values: { n: count } },
            first,
            last,
          },
        ]
      : [],
  );
