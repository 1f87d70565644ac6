import * as z from 'zod';
import { createWork } from '../../../lib/store/set-work';
import { guarded } from '../../access/guard';
import { makeToken } from '../../accounts/codes';
import { withSeverity } from '../../set-work/lay-forms';
import { parseWork } from '../../set-work/work-fields';

/** Makes a draft with a secret of its own, and leads on to its preview. */
export const POST = guarded('POST /api/work', async ({ body, read, store, by }) => {
  const { group } = read(z.object({ group: z.string() }));
  const { title, spec, times } = parseWork(body);
  const draft = { title, ...times, spec: withSeverity(spec) };
  const work = await createWork(store, group, makeToken(), draft, by);
  return { work, go: `/desk/work/${work}` };
});
