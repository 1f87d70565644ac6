import ical, { ICalCalendarMethod } from 'ical-generator';
import type { GroupCalendar } from '../../../../lib/store/calendar';

/** How often a calendar program should look again, seconds. */
const LOOK_AGAIN_SECONDS = 6 * 60 * 60;

/** RFC 5545: one event for each moment something is due, in UTC. Without an end: it is a moment. */
export function calendarText({ name, dates }: GroupCalendar): string {
  const calendar = ical({
    name: `Due dates: ${name}`,
    prodId: { company: 'Read the Wall', product: 'due dates', language: 'EN' },
    method: ICalCalendarMethod.PUBLISH,
    ttl: LOOK_AGAIN_SECONDS,
  });
  for (const { work, title, dueAt, createdAt, sequence } of dates) {
    calendar.createEvent({
      id: `due-${work}@read-the-wall`,
      sequence,
      stamp: new Date(createdAt),
      start: new Date(dueAt),
      summary: `Due: ${title}`,
    });
  }
  // The writer leaves the last line open; by RFC 5545 every line ends.
  return `${calendar.toString()}\r\n`;
}
