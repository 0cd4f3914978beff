import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import type { Day } from '../../src/day.ts';
import { type Site, siteOfFolder } from './built.ts';

const FOLDERS = ['data/garden', 'tests/books/gardens/day-zero', 'tests/books/gardens/southern'];

const calendarOf = (site: Site): string => String(site.get('calendar.ics'));
const eventsOf = (text: string): ICAL.Event[] =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));

test.each(FOLDERS)('the calendar of %s holds what its page says, for another program to read', async (folder) => {
  const site = await siteOfFolder(folder);
  const text = calendarOf(site);
  const page = String(site.get('calendar/index.html'));
  expect(page).toContain('href="../calendar.ics"');
  const events = eventsOf(text);
  expect(events.length).toBeGreaterThanOrEqual(6);
  expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
  for (const line of text.split('\r\n')) expect(new TextEncoder().encode(line).length, line).toBeLessThanOrEqual(75);
  for (const { startDate, endDate, summary } of events) {
    expect([startDate.isDate, endDate.isDate], summary).toEqual([true, true]);
    expect(endDate.compare(startDate), summary).toBe(1);
  }
});

/** Three mounds planted on 16 and 17 May 2026: the day after the last is where the event ends. */
test('planting out ends the day after its last', async () => {
  const events = eventsOf(calendarOf(await siteOfFolder('tests/books/gardens/day-zero')));
  const found = events.find(({ summary }) => summary === 'Plant out watermelons');
  expect([found?.startDate.toString(), found?.endDate.toString()]).toEqual(['2026-05-16', '2026-05-18']);
  expect(found?.uid).toBe('2026-watermelon-plant-out@sallow-yard.groundspot');
});

test('the same records give the same bytes, and the day of the book stamps it', async () => {
  const folder = 'tests/books/gardens/us-letter';
  const [first, second] = [await siteOfFolder(folder), await siteOfFolder(folder)];
  expect(calendarOf(first)).toBe(calendarOf(second));
  const earlier = await siteOfFolder(folder, '2025-06-01' as Day);
  expect(calendarOf(earlier)).toContain('DTSTAMP:20250601T000000Z');
});

test('without a season there is no calendar', async () => {
  const site = await siteOfFolder('tests/books/gardens/day-zero', '2020-01-01' as Day);
  expect(site.has('calendar.ics')).toBe(false);
});
