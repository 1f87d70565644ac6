import * as z from 'zod';
import { partIn } from '../../../../lib/store/record-owner';
import { createWork, workOf } from '../../../../lib/store/set-work';
import { guarded } from '../../../access/guard';
import { makeToken } from '../../../accounts/codes';
import { wrongField } from '../../../request/refusal';

/** Makes a draft like this work, without its dates and with a secret of its own, in a group that the same person teaches. */
export const POST = guarded('POST /api/work/copy', async ({ person, read, store, by }) => {
  const { work, into } = read(
    z.strictObject({ work: z.string(), into: z.string({ error: 'Choose a group.' }) }),
  );
  if (person.kind !== 'owner' && !(await partIn(store.db, into, person.userId))) {
    throw wrongField('into', 'Choose one of your own groups.');
  }
  const { title, spec, graceMs, release } = await workOf(store, work);
  const draft = { title, spec, graceMs, release, opensAt: null, dueAt: null };
  const copy = await createWork(store, into, makeToken(), draft, by);
  return { go: `/desk/work/${copy}` };
});
