import { handInsOnWall } from '../../../../../../lib/store/hand-in-record';
import { guarded } from '../../../../../access/guard';

/** How many have handed one wall in so far, for the projector: it draws afresh when this changes. The wall is not laid for it. */
export const GET = guarded('GET /api/book/marks/[work]/[place]', async ({ request, params, store }) => {
  const { work = '', place = '' } = params;
  const code = new URL(request.url).searchParams.get('code');
  const all = await handInsOnWall(store.db, work, /^\d{1,2}$/.test(place) ? Number(place) : 0);
  const handIns = all.filter((handIn) => handIn.code === code);
  return Response.json({
    ok: true,
    handedIn: new Set(handIns.map(({ learner }) => learner)).size,
    saysSound: handIns.filter(({ saysSound }) => saysSound).length,
  });
});
