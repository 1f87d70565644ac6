import { briefOfCode } from '../../../../../../../lib/exercise/brief-of-code';
import { guarded } from '../../../../../../access/guard';
import { workToSee } from '../../../../../../my-work/learner-work';
import { Refusal } from '../../../../../../request/refusal';
import { placePicture } from '../../../../../../walls/place-picture';

/** The place of a fault on a wall of set work, as laid or sound: for its learner, once the result is given out. */
export const GET = guarded(
  'GET /api/work/[work]/places/[place]/[picture]',
  async ({ person, params, store, at }) => {
    const { work = '', place = '', picture = '' } = params;
    const seen = await workToSee(store, work, person.learnerId, at);
    const wall = seen?.result?.walls.find((each) => String(each.place) === place);
    const brief = wall && briefOfCode(wall.code);
    const svg = brief ? placePicture(brief, picture) : null;
    if (svg === null) throw new Refusal(404, 'There is no such picture, or its result is not given out yet.');
    return new Response(svg, {
      headers: { 'content-type': 'image/svg+xml; charset=utf-8', 'cache-control': 'private, max-age=3600' },
    });
  },
);
