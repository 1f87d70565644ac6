import * as z from 'zod';
import { checkRoster } from '../../../../lib/classes/roster';
import { addToRoster } from '../../../../lib/store/groups/roster';
import { rosterOf } from '../../../../lib/store/learners';
import { guarded } from '../../../access/guard';
import { Refusal } from '../../../request/refusal';
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
  async ({ read, store, by }) => {
    const { group, text, dry } = read(fields);
    const typed = readRoster(text);
    const present = (await rosterOf(store.db, group)).map(({ name }) => name);
    const { rows, problems } =
      typed.problems.length > 0 ? { rows: [], problems: typed.problems } : checkRoster(typed.lines, present);
    if (dry) return { rows, problems };
    if (problems.length > 0) {
      const told = problems.map(({ line, message }) => `Line ${line}: ${message}`).join(' ');
      throw new Refusal(422, told, { text: told });
    }
    await addToRoster(store, group, rows, by);
    return { added: rows.length };
  },
  { mostBytes: MOST_BYTES },
);
