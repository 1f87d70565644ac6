import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { calendarText } from '../../../app/api/calendar/[token]/calendar-text';
import type { DueDate, GroupCalendar } from '../../../lib/store/calendar';

const CREATED = Date.UTC(2026, 0, 5, 8);

/** By the clocks of three zones: noon in London and New York, before and after the clocks change in March 2026. */
const DATES: readonly DueDate[] = [
  ['w1', '2026-03-07T12:00:00-05:00'],
  ['w2', '2026-03-08T12:00:00-04:00'],
  ['w3', '2026-03-28T12:00:00+00:00'],
  ['w4', '2026-03-29T12:00:00+01:00'],
  ['w5', '2026-06-30T23:59:00+05:30'],
].map(([work = '', due = '']) => ({
  work,
  title: `Work ${work}; with, commas\nand a second line and a title that is longer than one line may be: ${'ä'.repeat(60)}`,
  dueAt: Date.parse(due),
  createdAt: CREATED,
  sequence: 3,
}));

const CALENDAR: GroupCalendar = { name: 'Tuesday, evening', dates: DATES };

function eventsOf(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return calendar.getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));
}

// Read back with a second library that shares nothing with the writer.
describe('due dates in a calendar', () => {
  const text = calendarText(CALENDAR);
  const events = eventsOf(text);

  test('the same events at the same instants, on both sides of the change of clocks', () => {
    expect(events.map(({ uid }) => uid)).toEqual(DATES.map(({ work }) => `due-${work}@read-the-wall`));
    expect(events.map(({ startDate }) => startDate.toJSDate().getTime())).toEqual(
      DATES.map(({ dueAt }) => dueAt),
    );
    expect(events.map(({ sequence }) => sequence)).toEqual([3, 3, 3, 3, 3]);
    expect(events[0]?.summary).toBe(`Due: ${DATES[0]?.title}`);
  });

  // RFC 5545: PRODID and VERSION in the calendar, UID and DTSTAMP in the event, lines of at most 75 octets with CRLF.
  test('is a calendar by RFC 5545', () => {
    expect(text).toMatch(/^BEGIN:VCALENDAR\r\n[\s\S]*\r\nEND:VCALENDAR\r\n$/);
    expect(text).toMatch(/\r\nVERSION:2\.0\r\n/);
    expect(text).toMatch(/\r\nPRODID:/);
    expect(text.match(/\r\nDTSTAMP:20260105T080000Z/g)?.length).toBe(5);
    for (const line of text.split('\r\n'))
      expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  test('a due date is a moment: it has no end', () => {
    expect(text).not.toMatch(/\r\n(DTEND|DURATION)/);
  });

  test('no dates, still a calendar', () => {
    expect(eventsOf(calendarText({ name: 'Empty', dates: [] }))).toEqual([]);
  });
});
