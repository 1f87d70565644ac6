import { learnerData } from '../../../../lib/store/learner-data';
import { guarded } from '../../../access/guard';

/** All that is kept about the learner, as a file. */
export const GET = guarded('GET /api/join/my-data', async ({ person, store, at }) => {
  const data = await learnerData(store.db, person.learnerId, at, (time) => new Date(time).toISOString());
  return new Response(`${JSON.stringify(data, null, 2)}\n`, {
    headers: {
      'content-type': 'application/json; charset=utf-8',
      'content-disposition': 'attachment; filename="my-data.json"',
    },
  });
});
