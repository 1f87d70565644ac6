import * as z from 'zod';
import { openAttempt } from '../../../lib/store/attempts';
import { keptForm } from '../../../lib/store/drawn-forms';
import { guarded } from '../../access/guard';
import { briefsFor, givenWalls } from '../../set-work/lay-forms';

/** Begins the learner's next attempt, or gives the one they have begun. */
export const POST = guarded('POST /api/attempts', async ({ person, read, store, at }) => {
  const { work } = read(z.strictObject({ work: z.string() }));
  const { id, number } = await openAttempt(
    store,
    { work, learner: person.learnerId },
    async (row, attempt) =>
      (attempt === 1 ? await keptForm(store, row, person.learnerId) : null) ??
      givenWalls(briefsFor(row, person.learnerId, attempt)),
    at,
  );
  return { attempt: id, number };
});
