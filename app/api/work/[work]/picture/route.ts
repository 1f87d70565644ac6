import * as z from 'zod';
import { layByCode } from '../../../../../lib/engines/engines';
import { workOf } from '../../../../../lib/store/set-work';
import { printSvg } from '../../../../../lib/views/print-svg';
import { ViewError } from '../../../../../lib/views/view';
import { surveyedWall } from '../../../../../lib/wall/surveyed';
import { guarded } from '../../../../access/guard';
import { parseFields, Refusal } from '../../../../request/refusal';
import { wallOfFirstForm } from '../../../../set-work/lay-forms';

const fields = z.object({
  place: z.coerce.number().int().min(1),
  view: z.string().max(60).default('front'),
  /** Whose form; of everyone when it is left out. */
  learner: z.string().max(60).optional(),
});

/** One drawing of one wall of a set work, for preview and print. Without marks and key. */
export const GET = guarded('GET /api/work/[work]/picture', async ({ request, params, store }) => {
  const asked = parseFields(fields, Object.fromEntries(new URL(request.url).searchParams));
  const work = await workOf(store, params.work ?? '');
  const brief = await wallOfFirstForm(store, work, asked.learner ?? null, asked.place);
  if (!brief) throw new Refusal(404, 'This work has no such wall.');
  const lengths = brief.rules === 'united-states' ? 'inches' : 'mm';
  try {
    return new Response(printSvg(surveyedWall(layByCode(brief).wall), asked.view, lengths), {
      headers: { 'content-type': 'image/svg+xml; charset=utf-8', 'cache-control': 'private, max-age=3600' },
    });
  } catch (error) {
    if (!(error instanceof ViewError)) throw error;
    throw new Refusal(404, error.message);
  }
});
