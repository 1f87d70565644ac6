import * as z from 'zod';
import { partIn } from '../../../../lib/store/record-owner';
import { createWork, workOf } from '../../../../lib/store/set-work';
import { guarded } from '../../../access/guard';
import { makeToken } from '../../../accounts/codes';
import { parseFields, wrongField } from '../../../request/refusal';

const fields = z.strictObject({ work: z.string(), into: z.string({ error: 'Choose a group.' }) });

/** Makes a draft like this work, without its dates and with a secret of its own, in a group that the same person teaches. */
export const POST = guarded('POST /api/work/copy', async ({ person, body, store, at }) => {
  const { work, into } = parseFields(fields, body);
  if (person.kind !== 'owner' && !(await partIn(store.db, into, person.userId))) {
    throw wrongField('into', 'Choose one of your own groups.');
  }
  const { title, spec, graceMs, release } = await workOf(store, work);
  const draft = { title, spec, graceMs, release, opensAt: null, dueAt: null };
  const copy = await createWork(store, into, makeToken(), draft, { actor: `user ${person.userId}`, at });
  return Response.json({ ok: true, go: `/desk/work/${copy}` });
});
