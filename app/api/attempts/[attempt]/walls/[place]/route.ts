import { gunzipSync } from 'node:zlib';
import { openWall } from '../../../../../../lib/store/instrument-uses';
import { guarded } from '../../../../../access/guard';
import { Refusal } from '../../../../../request/refusal';
import { sentWall } from '../../../../../server/site-walls';

/** One wall of the learner's open attempt, for the page that works on it. Nothing of the key is in it. */
export const GET = guarded('GET /api/attempts/[attempt]/walls/[place]', async ({ params, store }) => {
  const { attempt = '', place = '' } = params;
  const wall = /^[1-9]\d?$/.test(place) ? await openWall(store, attempt, Number(place)) : undefined;
  const sent = wall && sentWall(wall.code, wall.offline);
  if (!sent) throw new Refusal(404, 'There is no such wall, or its work is handed in.');
  const headers = { 'content-type': 'application/json' };
  return new Response(new Uint8Array(gunzipSync(sent)), { headers });
});
