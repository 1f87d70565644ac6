import * as z from 'zod';
import { lookAt } from '../../../../../../../lib/site-drawn/site-wall';
import { liftedOff } from '../../../../../../../lib/store/instrument-uses';
import { parseView } from '../../../../../../../lib/views/parse-view';
import { ViewError } from '../../../../../../../lib/views/view';
import { SUN_REACH } from '../../../../../../../lib/views/viewing-conditions';
import { guarded } from '../../../../../../access/guard';
import { parseFields, Refusal } from '../../../../../../request/refusal';
import { wallAsked } from '../wall-asked';

const fields = z.strictObject({
  /** As parseView reads it. */
  view: z.string().max(60),
  system: z.enum(['mm', 'inches']),
  distance: z.enum(['near', 'six metres', 'ten metres']).default('near'),
  /** Left out: daylight. */
  sun: z.coerce.number().min(-SUN_REACH).max(SUN_REACH).optional(),
});

/** One look at a wall of the learner's open attempt, drawn here. Of what is behind a unit only once it was lifted. */
export const GET = guarded(
  'GET /api/attempts/[attempt]/walls/[place]/look',
  async ({ request, params, store }) => {
    const asked = parseFields(fields, Object.fromEntries(new URL(request.url).searchParams));
    const { on, site } = await wallAsked(store, params);
    try {
      const view = parseView(site.bare.wall, asked.view);
      if (view.kind === 'behind' && !(await liftedOff(store, on)).includes(view.unit)) {
        throw new Refusal(409, 'Lift the unit first.');
      }
      const viewing = { distance: asked.distance, sun: asked.sun ?? null };
      // The wall of an attempt never changes.
      return Response.json(lookAt(site, view, asked.system, viewing), {
        headers: { 'cache-control': 'private, max-age=86400' },
      });
    } catch (error) {
      if (!(error instanceof ViewError)) throw error;
      throw new Refusal(404, error.message);
    }
  },
);
