import { randomUUID } from 'node:crypto';
import { overrideMark } from '../../../../lib/store/book/book-changes';
import { guarded } from '../../../access/guard';
import { parseFields } from '../../../request/refusal';
import { byStaff, overrideFields } from '../book-fields';
import { refusingBookErrors } from '../refuse';

/** An instructor's own mark, with the reason, in the place of the marking. */
export const POST = guarded('POST /api/book/override', async ({ person, body, store, at }) => {
  const fields = parseFields(overrideFields, body);
  await refusingBookErrors(overrideMark(store, { id: randomUUID(), ...fields }, byStaff(person, at)));
  return Response.json({ ok: true });
});
