import { calendarBehind } from '../../../../lib/store/calendar';
import { sha256Of } from '../../../../lib/store/receipt';
import { guarded } from '../../../access/guard';
import { Refusal } from '../../../request/refusal';
import { calendarText } from './calendar-text';

/** The due dates of a group, for a calendar program. Whoever has the address may read it; it holds no names of learners. */
export const GET = guarded('GET /api/calendar/[token]', async ({ params, store }) => {
  const { token = '' } = params;
  const calendar = await calendarBehind(store.db, sha256Of(token.replace(/\.ics$/, '')));
  if (calendar === undefined) {
    throw new Refusal(404, 'This calendar address does not work. Ask your instructor for the new one.');
  }
  return new Response(calendarText(calendar), {
    headers: {
      'content-type': 'text/calendar; charset=utf-8',
      'content-disposition': 'inline; filename="due-dates.ics"',
    },
  });
});
