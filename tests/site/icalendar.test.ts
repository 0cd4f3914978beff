import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { addDays, type Day, dayOf } from '../../src/day.ts';
import { type CalendarSetting, type DayEvent, icalendar } from '../../src/site/icalendar.ts';
import { MOST_OCTETS, SEVERAL_DAYS, TEXT } from '../published/icalendar/rfc5545.ts';

const SETTING: CalendarSetting = {
  name: 'The year in the long bed',
  prodid: '-//example.org//handbook//EN',
  host: 'garden.example.org',
  stamped_on: dayOf(2025, 11, 3),
};

const event = (over: Partial<DayEvent> = {}): DayEvent => ({
  id: 'sow-under-cover',
  summary: 'Sow under cover',
  description: '',
  first: dayOf(2026, 4, 14),
  last: dayOf(2026, 4, 20),
  ...over,
});

/** The file; fails when there is none. */
function written(events: readonly DayEvent[], over: Partial<CalendarSetting> = {}): string {
  const file = icalendar(events, { ...SETTING, ...over });
  if (file === null) throw new Error('no calendar');
  return file;
}

/** Lines as they stand, breaks taken off. */
const linesOf = (file: string): string[] => file.slice(0, -2).split('\r\n');
/** Content lines, put together again by section 3.1. */
const contentOf = (file: string): string[] => linesOf(file.replaceAll('\r\n ', ''));

// ical.js follows RFC 5545 and has to be told that RFC 7986 makes the name a text.
ICAL.design.icalendar.property.name = ICAL.design.icalendar.property.summary;

/** What another program reads from it: ical.js. */
function readBack(file: string) {
  const calendar = new ICAL.Component(ICAL.parse(file));
  const events = calendar.getAllSubcomponents('vevent').map((component) => {
    const one = new ICAL.Event(component);
    return {
      id: one.uid,
      summary: one.summary ?? '',
      description: one.description ?? '',
      first: one.startDate.toString(),
      end: one.endDate.toString(),
      whole_days: one.startDate.isDate && one.endDate.isDate,
      stamp: String(component.getFirstPropertyValue('dtstamp')),
      transparency: String(component.getFirstPropertyValue('transp')),
    };
  });
  return { name: String(calendar.getFirstPropertyValue('name')), events };
}

/** A text as it may stand in a calendar: breaks of any kind as \n, no other controls; judged character by character. */
function plain(text: string): string {
  const codes = [...text.replaceAll('\r\n', '\n')].map((character) => {
    const code = character.codePointAt(0) ?? 0;
    if ([0x0a, 0x0b, 0x0c, 0x0d, 0x85, 0x2028, 0x2029].includes(code)) return '\n';
    return code === 9 || (code >= 32 && (code < 127 || code >= 160)) ? character : '';
  });
  return codes.join('');
}

describe('RFC 5545', () => {
  it('3.6.1: an event of several days ends on the day after, and takes up no time', () => {
    const { first, last, lines } = SEVERAL_DAYS;
    const content = contentOf(written([event({ first: first as Day, last: last as Day })]));
    for (const line of lines) expect(content).toContain(line);
  });
  it('3.3.11: a text of three lines', () => {
    expect(contentOf(written([event({ description: TEXT.text })]))).toContain(`DESCRIPTION:${TEXT.value}`);
  });
  it('the whole file, line by line', () => {
    expect(written([event({ description: 'Warm, damp; not wet.\nBack\\slash' })])).toBe(
      [
        'BEGIN:VCALENDAR',
        'VERSION:2.0',
        'PRODID:-//example.org//handbook//EN',
        'CALSCALE:GREGORIAN',
        'NAME:The year in the long bed',
        'X-WR-CALNAME:The year in the long bed',
        'BEGIN:VEVENT',
        'UID:sow-under-cover@garden.example.org',
        'DTSTAMP:20251103T000000Z',
        'DTSTART;VALUE=DATE:20260414',
        'DTEND;VALUE=DATE:20260421',
        'SUMMARY:Sow under cover',
        'DESCRIPTION:Warm\\, damp\\; not wet.\\nBack\\\\slash',
        'TRANSP:TRANSPARENT',
        'END:VEVENT',
        'END:VCALENDAR',
        '',
      ].join('\r\n'),
    );
  });
  it('3.6: no event, no calendar', () => {
    expect(icalendar([], SETTING)).toBeNull();
  });
});

describe('days', () => {
  it.each([
    ['2026-04-14', '2026-04-14', '20260415'],
    ['2026-02-27', '2026-02-28', '20260301'],
    ['2028-02-28', '2028-02-28', '20280229'],
    ['2025-12-30', '2025-12-31', '20260101'],
  ])('%s to %s ends %s', (first, last, end) => {
    expect(contentOf(written([event({ first: first as Day, last: last as Day })]))).toContain(
      `DTEND;VALUE=DATE:${end}`,
    );
  });
  it('stand in order, whatever the order given, and so does the file', () => {
    const events = [
      event({ id: 'c', first: dayOf(2026, 5, 1), last: dayOf(2026, 5, 3) }),
      event({ id: 'b' }),
      event({ id: 'a' }),
      event({ id: 'z', first: dayOf(2026, 3, 1), last: dayOf(2026, 9, 1) }),
    ];
    expect(readBack(written(events)).events.map(({ id }) => id.split('@')[0])).toEqual(['z', 'a', 'b', 'c']);
    expect(written(events.toReversed())).toBe(written(events));
  });
  it('the stamp is the one handed in, and nothing else tells when the file was made', () => {
    const [one, other] = [written([event()]), written([event()], { stamped_on: dayOf(2025, 11, 4) })];
    expect(other).toBe(one.replace('DTSTAMP:20251103T000000Z', 'DTSTAMP:20251104T000000Z'));
    expect(written([event()])).toBe(one);
  });
});

describe('folding', () => {
  const summaryOf = (length: number): string => 'x'.repeat(length - 'SUMMARY:'.length);
  const folds = (summary: string): number =>
    linesOf(written([event({ summary })])).filter((line) => line.startsWith(' ')).length;

  it('75 octets stay in one line, 76 take two, 149 take two, 150 take three', () => {
    expect([75, 76, 149, 150].map((length) => folds(summaryOf(length)))).toEqual([0, 1, 1, 2]);
  });
  it('counts octets, not letters: an é is two, a melon four', () => {
    expect([folds(summaryOf(74)), folds(`${summaryOf(73)}é`), folds(`${summaryOf(74)}é`)]).toEqual([0, 0, 1]);
    expect([folds(`${summaryOf(71)}🍈`), folds(`${summaryOf(72)}🍈`)]).toEqual([0, 1]);
  });
});

describe('hostile texts', () => {
  it.each([
    'END:VEVENT\r\nEND:VCALENDAR\r\nBEGIN:VCALENDAR',
    'x\r\nATTACH:https://example.org/bad',
    'x\rDTEND;VALUE=DATE:19990101',
    'x\nBEGIN:VALARM\nTRIGGER:-PT1H',
    'x\u2028SUMMARY:y\u2029\u0085z\vq\f',
    '\u0000\u0007\u001b[31mred\u007f',
    ';;,,\\n\\N\\\\;:"^\'',
    ' leads and trails ',
    '\t',
  ])('%j stays a text', (hostile) => {
    const file = written([event({ summary: hostile, description: hostile })], { name: hostile });
    const { name, events } = readBack(file);
    expect(name).toBe(plain(hostile));
    expect(events).toHaveLength(1);
    expect(events[0]).toMatchObject({ summary: plain(hostile), description: plain(hostile), first: '2026-04-14' });
    expect(contentOf(file)).toHaveLength(16);
  });
  it('an id cannot leave its line', () => {
    const file = written([event({ id: 'a\r\nSUMMARY:b' })], { host: 'h,o\nst', prodid: 'p\r\nX:1' });
    expect(contentOf(file).filter((line) => /^(SUMMARY|X:)/.test(line))).toEqual(['SUMMARY:Sow under cover']);
    expect(readBack(file).events[0]?.id).toBe('a\nSUMMARY:b@h,o\nst');
  });
  it('half a character is counted as what it is written as', () => {
    const lines = linesOf(written([event({ summary: '\ud83c'.repeat(100) })]));
    for (const line of lines) expect(Buffer.from(line).length).toBeLessThanOrEqual(MOST_OCTETS);
  });
});

it('any events: other programs read what was meant, in lines of 75 octets that tear no character', () => {
  const text = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 200, size: 'max' }),
    fc.string({ unit: 'grapheme', maxLength: 200, size: 'max' }),
    fc
      .array(fc.constantFrom('\r', '\n', ',', ';', '\\', ':', ' ', '\t', 'n', '🍉', 'ä'), {
        maxLength: 200,
        size: 'max',
      })
      .map((parts) => parts.join('')),
  );
  const events = fc.uniqueArray(
    fc.record({
      id: fc.stringMatching(/^[a-z0-9-]{1,80}$/),
      summary: text,
      description: text,
      first: fc.integer({ min: 0, max: 4000 }).map((step) => addDays(dayOf(2020, 1, 1), step)),
      days: fc.integer({ min: 0, max: 200 }),
    }),
    { minLength: 1, maxLength: 4, selector: ({ id }) => id },
  );
  let folded = 0;
  fc.assert(
    fc.property(events, text, (drawn, name) => {
      const given = drawn.map(({ days, ...one }) => ({ ...one, last: addDays(one.first, days) }));
      const file = written(given, { name });
      expect(file.endsWith('END:VCALENDAR\r\n')).toBe(true);
      expect(file.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
      for (const line of linesOf(file)) {
        expect(Buffer.from(line).length).toBeLessThanOrEqual(MOST_OCTETS);
        expect(line).not.toMatch(/\p{Surrogate}/u);
        folded += line.startsWith(' ') ? 1 : 0;
      }
      const back = readBack(file);
      expect(back.name).toBe(plain(name));
      const byId = (a: { id: string }, b: { id: string }): number => (a.id < b.id ? -1 : 1);
      expect(back.events.toSorted(byId)).toEqual(
        given
          .map(({ id, summary, description, first, last }) => ({
            id: `${id}@${SETTING.host}`,
            summary: plain(summary),
            description: plain(description),
            first,
            end: addDays(last, 1),
            whole_days: true,
            stamp: '2025-11-03T00:00:00Z',
            transparency: 'TRANSPARENT',
          }))
          .sort(byId),
      );
    }),
    { seed: 20250812, numRuns: 200 },
  );
  expect(folded).toBeGreaterThan(500);
});

describe('mistakes of the caller throw', () => {
  it('an event that ends before it begins', () => {
    const wrong = [event({ last: dayOf(2026, 4, 13) })];
    expect(() => icalendar(wrong, SETTING)).toThrow('invalid last: 2026-04-13 is before 2026-04-14');
  });
  it('two events of one id', () => {
    expect(() => icalendar([event(), event()], SETTING)).toThrow('invalid id: sow-under-cover twice');
  });
});
