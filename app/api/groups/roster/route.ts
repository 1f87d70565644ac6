import * as z from 'zod';
import { checkRoster } from '../../../../lib/classes/roster';
import { addToRoster, RosterError } from '../../../../lib/store/groups/roster';
import { rosterOf } from '../../../../lib/store/learners';
import { guarded } from '../../../access/guard';
import { parseFields, Refusal } from '../../../request/refusal';
import { readRoster } from '../../../set-work/roster-lines';

/** A roster file is at most 1 MB. */
const MOST_BYTES = 1024 * 1024 + 4096;
const EMPTY = 'Type or paste the names, one on each line.';
const fields = z.strictObject({
  group: z.string(),
  text: z.string({ error: EMPTY }).refine((text) => text.trim() !== '', EMPTY),
  /** Try it only: nothing is written. */
  dry: z.boolean(),
});

/** Adds names to a roster: all of them or, while one line is wrong, none. */
export const POST = guarded(
  'POST /api/groups/roster',
  async ({ person, body, store, at }) => {
    const { group, text, dry } = parseFields(fields, body);
    const read = readRoster(text);
    const present = (await rosterOf(store.db, group)).map(({ name }) => name);
    const { rows, problems } =
      read.problems.length > 0 ? { rows: [], problems: read.problems } : checkRoster(read.lines, present);
    if (dry) return Response.json({ ok: true, rows, problems });
    if (problems.length > 0) {
      const told = problems.map(({ line, message }) => `Line ${line}: ${message}`).join(' ');
      throw new Refusal(422, told, { text: told });
    }
    try {
      await addToRoster(store, group, rows, { actor: `user ${person.userId}`, at });
    } catch (error) {
      if (!(error instanceof RosterError)) throw error;
      throw new Refusal(409, error.message, { text: error.message });
    }
    return Response.json({ ok: true, added: rows.length });
  },
  { mostBytes: MOST_BYTES },
);
