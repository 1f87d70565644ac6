import * as z from 'zod';
import { TIME_FACTORS } from '../../../../lib/classes/roster';
import { setTimeFactor } from '../../../../lib/store/groups/roster';
import { guarded } from '../../../access/guard';

const { least, most } = TIME_FACTORS;
const WORDS = `Write a whole number of percent from ${least} to ${most}.`;
const fields = z.strictObject({
  learner: z.string(),
  timeFactor: z
    .string({ error: WORDS })
    .trim()
    .regex(/^\d{3}\s*%?$/, WORDS)
    .transform((text) => Number.parseInt(text, 10))
    .refine((percent) => percent >= least && percent <= most, WORDS),
});

/** More time for one learner, where a set work has a time limit. */
export const POST = guarded('POST /api/groups/time', async ({ read, store, by }) => {
  const { learner, timeFactor } = read(fields);
  await setTimeFactor(store, learner, timeFactor, by);
});
