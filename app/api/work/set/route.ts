import { after } from 'next/server';
import * as z from 'zod';
import { moveWork } from '../../../../lib/store/set-work';
import { guarded } from '../../../access/guard';
import { log } from '../../../server/log';
import { drawAhead } from '../../../set-work/draw-ahead';

/** Sets a draft: from now on its learners see it. */
export const POST = guarded('POST /api/work/set', async ({ read, store, by }) => {
  const { work } = read(z.strictObject({ work: z.string() }));
  await moveWork(store, work, 'set', by);
  after(() =>
    drawAhead(store, work).catch((error) => log.error({ err: error, work }, 'forms not drawn ahead')),
  );
});
