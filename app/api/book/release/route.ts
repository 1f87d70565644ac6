import { releaseWork } from '../../../../lib/store/book/book-changes';
import { guarded } from '../../../access/guard';
import { parseFields } from '../../../request/refusal';
import { byStaff, releaseFields } from '../book-fields';

/** Shows the results of a set work to its learners. */
export const POST = guarded('POST /api/book/release', async ({ person, body, store, at }) => {
  const { work } = parseFields(releaseFields, body);
  const released = await releaseWork(store, work, byStaff(person, at));
  return Response.json({ ok: true, released });
});
