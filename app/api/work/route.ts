import * as z from 'zod';
import { createWork } from '../../../lib/store/set-work';
import { guarded } from '../../access/guard';
import { makeToken } from '../../accounts/codes';
import { parseFields } from '../../request/refusal';
import { withSeverity } from '../../set-work/lay-forms';
import { parseWork } from '../../set-work/work-fields';

/** Makes a draft with a secret of its own, and leads on to its preview. */
export const POST = guarded('POST /api/work', async ({ person, body, store, at }) => {
  const { group } = parseFields(z.object({ group: z.string() }), body);
  const { title, spec, times } = parseWork(body);
  const secret = makeToken();
  const draft = { title, ...times, spec: withSeverity(spec) };
  const work = await createWork(store, group, secret, draft, { actor: `user ${person.userId}`, at });
  return Response.json({ ok: true, work, go: `/desk/work/${work}` });
});
