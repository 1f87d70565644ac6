import { handInsOnWall } from '../../../../../../lib/store/hand-in-record';
import { guarded } from '../../../../../access';
import { codesOf, openPlace } from '../../../../../desk/open-place';
import { Refusal } from '../../../../../refusal';

/** Where the group has marked one wall so far, for the projector. The key is not in it: that comes with the page, on a press. */
export const GET = guarded('GET /api/book/marks/[work]/[place]', async ({ request, params, store }) => {
  const { work = '', place = '' } = params;
  const handIns = await handInsOnWall(store.db, work, /^\d{1,2}$/.test(place) ? Number(place) : 0);
  const asked = new URL(request.url).searchParams.get('code');
  const code = asked ?? codesOf(handIns)[0];
  const open = code === undefined ? null : openPlace(code, handIns);
  if (open === null) throw new Refusal(404, 'Nobody has handed this wall in yet.');
  return Response.json({
    ok: true,
    handedIn: new Set(open.handIns.map(({ learner }) => learner)).size,
    saysSound: open.handIns.filter(({ saysSound }) => saysSound).length,
    heat: open.heat,
  });
});
