import * as z from 'zod';
import { changeDraft, WorkError } from '../../../../lib/store/set-work';
import { guarded } from '../../../access/guard';
import { parseFields, Refusal } from '../../../request/refusal';
import { withSeverity } from '../../../set-work/lay-forms';
import { parseWork } from '../../../set-work/work-fields';

/** Changes a draft. Its secret stays: the same fields ask the same walls. */
export const POST = guarded('POST /api/work/edit', async ({ person, body, store, at }) => {
  const { work } = parseFields(z.object({ work: z.string() }), body);
  const { title, spec, times } = parseWork(body);
  try {
    const draft = { title, ...times, spec: withSeverity(spec) };
    await changeDraft(store, work, draft, { actor: `user ${person.userId}`, at });
  } catch (error) {
    if (!(error instanceof WorkError)) throw error;
    throw new Refusal(409, error.message);
  }
  return Response.json({ ok: true, go: `/desk/work/${work}` });
});
