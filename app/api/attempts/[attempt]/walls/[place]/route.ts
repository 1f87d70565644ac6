import { briefOfCode } from '../../../../../../lib/exercise/brief-of-code';
import { openWall } from '../../../../../../lib/store/attempts';
import { layForSetWork } from '../../../../../../lib/wall-page/wall-to-read';
import { guarded } from '../../../../../access/guard';
import { Refusal } from '../../../../../request/refusal';

/** One wall of the learner's open attempt, for the page that works on it. Nothing of the key is in it. */
export const GET = guarded('GET /api/attempts/[attempt]/walls/[place]', async ({ params, store }) => {
  const { attempt = '', place = '' } = params;
  const wall = /^[1-9]\d?$/.test(place) ? await openWall(store, attempt, Number(place)) : undefined;
  const brief = wall && briefOfCode(wall.code);
  if (!brief) throw new Refusal(404, 'There is no such wall, or its work is handed in.');
  return Response.json(layForSetWork(brief));
});
