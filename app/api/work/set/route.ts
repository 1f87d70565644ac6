import { after } from 'next/server';
import * as z from 'zod';
import { moveWork } from '../../../../lib/store/set-work';
import { guarded } from '../../../access/guard';
import { parseFields } from '../../../request/refusal';
import { log } from '../../../server/log';
import { drawAhead } from '../../../set-work/draw-ahead';

const fields = z.strictObject({ work: z.string() });

/** Sets a draft: from now on its learners see it. */
export const POST = guarded('POST /api/work/set', async ({ person, body, store, at }) => {
  const { work } = parseFields(fields, body);
  await moveWork(store, work, 'set', { actor: `user ${person.userId}`, at });
  after(() =>
    drawAhead(store, work).catch((error) => log.error({ err: error, work }, 'forms not drawn ahead')),
  );
  return Response.json({ ok: true });
});
