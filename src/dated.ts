import { type Day, lastDayOfMonth, parseDay } from './day.ts';

/**
 * When something happened, as well as its keeper knew: a day, about a day, a span, a month, or unknown.
 * `first` and `last` are the days between which it lies; both null when unknown.
 */
export type Dated =
  | {
      readonly kind: 'day' | 'about' | 'span' | 'month';
      readonly first: Day;
      readonly last: Day;
      readonly text: string;
    }
  | { readonly kind: 'unknown'; readonly first: null; readonly last: null; readonly text: string };

/** A date that names one day, sure or about. */
export type OneDay = Extract<Dated, { readonly first: Day }>;

/** Whether a date names one day, sure or about: spans and months name none. */
export const isOneDay = (date: Dated): date is OneDay => date.kind === 'day' || date.kind === 'about';

/** Reads the one date grammar of all records. Null when the text is none of its five forms. */
export function parseDated(text: string): Dated | null {
  if (text === 'unknown') return { kind: 'unknown', first: null, last: null, text };
  const day = parseDay(text);
  if (day) return { kind: 'day', first: day, last: day, text };
  if (text.startsWith('about ')) return about(text);
  if (text.includes('..')) return span(text);
  return month(text);
}

function about(text: string): Dated | null {
  const day = parseDay(text.slice('about '.length).trim());
  return day && { kind: 'about', first: day, last: day, text };
}

function span(text: string): Dated | null {
  const [first, last, more] = text.split('..').map((end) => parseDay(end.trim()));
  if (!first || !last || more !== undefined || first > last) return null;
  return { kind: 'span', first, last, text };
}

function month(text: string): Dated | null {
  const match = /^(\d{4})-(\d{2})$/.exec(text);
  const first = match && parseDay(`${text}-01`);
  if (!first) return null;
  return { kind: 'month', first, last: lastDayOfMonth(Number(match[1]), Number(match[2])), text };
}

/** True only when no reading of the two dates puts `earlier` on or before `later`. */
export function certainlyAfter(earlier: Dated | null, later: Dated | null): boolean {
  if (!earlier?.first || !later?.last) return false;
  if (earlier.kind === 'about' || later.kind === 'about') return false;
  return earlier.first > later.last;
}
