import * as z from 'zod';
import { AttemptError, openAttempt } from '../../../lib/store/attempts';
import { keptForm } from '../../../lib/store/drawn-forms';
import { guarded } from '../../access/guard';
import { parseFields, Refusal } from '../../request/refusal';
import { briefsFor, givenWalls } from '../../set-work/lay-forms';

const fields = z.strictObject({ work: z.string() });

/** Begins the learner's next attempt, or gives the one they have begun. */
export const POST = guarded('POST /api/attempts', async ({ person, body, store, at }) => {
  const { work } = parseFields(fields, body);
  try {
    const { id, number } = await openAttempt(
      store,
      { work, learner: person.learnerId },
      async (row, attempt) =>
        (attempt === 1 ? await keptForm(store, row, person.learnerId) : null) ??
        givenWalls(briefsFor(row, person.learnerId, attempt)),
      at,
    );
    return Response.json({ ok: true, attempt: id, number });
  } catch (error) {
    if (!(error instanceof AttemptError)) throw error;
    throw new Refusal(409, error.message);
  }
});
