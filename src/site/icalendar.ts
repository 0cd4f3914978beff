/** A calendar file of whole days: RFC 5545. */
import { addDays, type Day } from '../day.ts';

const CRLF = '\r\n';
/** RFC 5545, 3.1: octets in a line without its break. */
const MOST_OCTETS = 75;

export interface DayEvent {
  /** Unique in the calendar and the same in every build. */
  readonly id: string;
  readonly summary: string;
  /** Empty for none. */
  readonly description: string;
  readonly first: Day;
  /** The last day it is on, itself included. */
  readonly last: Day;
}

export interface CalendarSetting {
  readonly name: string;
  /** Names the program that wrote the file. */
  readonly prodid: string;
  /** Follows the id and an @ in each UID; the RFC asks for a domain or another name no other calendar has. */
  readonly host: string;
  /** Goes out as 00:00 UTC of this day, so that the same records give the same bytes. */
  readonly stamped_on: Day;
}

/**
 * The text of a calendar, in order of day and id whatever the order given; null without events, because the RFC (3.6)
 * allows no calendar without any. Sections of the RFC: 3.1 folding, 3.3.11 text, 3.6.1 events, 3.8 properties; the name
 * stands as NAME (RFC 7986) and as X-WR-CALNAME, which older programs read. An event takes up nobody's time.
 * Throws RangeError for an event that ends before it begins, or an id that comes twice.
 */
export function icalendar(events: readonly DayEvent[], setting: CalendarSetting): string | null {
  if (events.length === 0) return null;
  const ids = new Set<string>();
  for (const { id, first, last } of events) {
    if (last < first) throw new RangeError(`invalid last: ${last} is before ${first}`);
    if (ids.has(id)) throw new RangeError(`invalid id: ${id} twice`);
    ids.add(id);
  }
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    `PRODID:${text(setting.prodid)}`,
    'CALSCALE:GREGORIAN',
    `NAME:${text(setting.name)}`,
    `X-WR-CALNAME:${text(setting.name)}`,
    ...[...events].sort(inOrder).flatMap((event) => eventLines(event, setting)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => folded(line) + CRLF).join('');
}

function eventLines({ id, summary, description, first, last }: DayEvent, setting: CalendarSetting): string[] {
  return [
    'BEGIN:VEVENT',
    `UID:${text(`${id}@${setting.host}`)}`,
    `DTSTAMP:${basic(setting.stamped_on)}T000000Z`,
    `DTSTART;VALUE=DATE:${basic(first)}`,
    `DTEND;VALUE=DATE:${basic(addDays(last, 1))}`,
    `SUMMARY:${text(summary)}`,
    ...(description === '' ? [] : [`DESCRIPTION:${text(description)}`]),
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ];
}

const basic = (day: Day): string => day.replaceAll('-', '');

function inOrder(a: DayEvent, b: DayEvent): number {
  const [one, other] = [`${a.first} ${a.id}`, `${b.first} ${b.id}`];
  return one < other ? -1 : 1;
}

/** Any kind of line break becomes \n; other control characters, which the RFC forbids in text, go. */
function text(value: string): string {
  return value
    .replace(/\r\n|[\n\v\f\r\u0085\u2028\u2029]/g, '\n')
    .replace(/[\0-\x08\x0e-\x1f\x7f-\x9f]/g, '')
    .replace(/[\\;,]/g, '\\$&')
    .replaceAll('\n', '\\n');
}

/** A long line goes on in the next after one space, which counts; no character is torn. */
function folded(line: string): string {
  let [out, octets] = ['', 0];
  for (const character of line) {
    const more = Buffer.byteLength(character);
    if (octets + more > MOST_OCTETS) {
      out += `${CRLF} `;
      octets = 1;
    }
    out += character;
    octets += more;
  }
  return out;
}
