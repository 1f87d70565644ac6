import * as z from 'zod';
import { INSTRUMENTS } from '../../../../../../../lib/instruments/instrument';
import { readingsOf } from '../../../../../../../lib/site-drawn/site-wall';
import { lift, liftedOff, noteUse } from '../../../../../../../lib/store/instrument-uses';
import { guarded } from '../../../../../../access/guard';
import { Refusal } from '../../../../../../request/refusal';
import { wallAsked } from '../wall-asked';

const part = z.string().min(1).max(40);
const fields = z.discriminatedUnion('used', [
  z.strictObject({ used: z.literal('lift'), part }),
  z.strictObject({
    used: z.enum(INSTRUMENTS),
    part,
    turned: z.boolean(),
    /** The first of two points. */
    from: part.nullable(),
  }),
]);

/** Uses an instrument on a wall of the learner's open attempt, or lifts a unit off it. Each use is kept with the attempt. */
export const POST = guarded(
  'POST /api/attempts/[attempt]/walls/[place]/uses',
  async ({ read, params, store, at }) => {
    const asked = read(fields);
    const { on, site, mayLift } = await wallAsked(store, params);
    const isOf = (id: string, kind?: string) => {
      const found = site.bare.parts.get(id);
      return found !== undefined && (kind === undefined || found.kind === kind);
    };
    if (asked.used === 'lift') {
      if (!isOf(asked.part, 'unit')) throw new Refusal(404, 'This wall has no such unit.');
      await lift(store, on, asked.part, mayLift, at);
      return { readings: [] };
    }
    if (!isOf(asked.part) || (asked.from !== null && !isOf(asked.from))) {
      throw new Refusal(404, 'This wall has no such part.');
    }
    const lifted = (await liftedOff(store, on)).includes(asked.part);
    await noteUse(store, on, { used: asked.used, part: asked.part }, at);
    return { readings: readingsOf(site, { ...asked, instrument: asked.used }, lifted) };
  },
);
