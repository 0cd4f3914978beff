import type { Book } from '../book/book.ts';
import { icalendar } from './icalendar.ts';
import type { Messages } from './messages.ts';
import { slug } from './slug.ts';

/** Name of the calendar below the site. */
export const CALENDAR = 'calendar.ics';

/** The book's events as a calendar any program reads; null when no page has one, or before the first season. */
export function calendarFile({ facts, pages }: Book, messages: Messages): string | null {
  const { garden, today } = facts;
  if (today === null) return null;
  const events = pages.flatMap((page) => page.events ?? []);
  return icalendar(
    events.map(({ id, summary, description, first, last }) => ({
      id,
      summary: messages(summary.code, summary.values),
      description: messages(description.code, description.values),
      first,
      last,
    })),
    {
      name: garden.about.name,
      prodid: '-//groundspot//handbook//EN',
      host: `${slug(garden.about.name, 'garden')}.groundspot`,
      stamped_on: today,
    },
  );
}
