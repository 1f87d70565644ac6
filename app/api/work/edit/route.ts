import * as z from 'zod';
import { changeDraft } from '../../../../lib/store/set-work';
import { guarded } from '../../../access/guard';
import { withSeverity } from '../../../set-work/lay-forms';
import { parseWork } from '../../../set-work/work-fields';

/** Changes a draft. Its secret stays: the same fields ask the same walls. */
export const POST = guarded('POST /api/work/edit', async ({ body, read, store, by }) => {
  const { work } = read(z.object({ work: z.string() }));
  const { title, spec, times } = parseWork(body);
  await changeDraft(store, work, { title, ...times, spec: withSeverity(spec) }, by);
  return { go: `/desk/work/${work}` };
});
