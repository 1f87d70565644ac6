import { randomBytes } from 'node:crypto';
import { replaceCalendarLink } from '../../../../lib/store/calendar';
import { sha256Of } from '../../../../lib/store/receipt';
import { guarded } from '../../../access/guard';
import { calendarFields } from '../book-fields';

/** Of the secret in the address: 192 bits. */
const TOKEN_BYTES = 24;

/** Makes the secret address of a group's due dates. It is shown this once; the one before it stops working. */
export const POST = guarded('POST /api/book/calendar-link', async ({ read, store, by }) => {
  const { group } = read(calendarFields);
  const token = randomBytes(TOKEN_BYTES).toString('base64url');
  await replaceCalendarLink(store, { tokenHash: sha256Of(token), group }, by);
  return { link: `/api/calendar/${token}` };
});
