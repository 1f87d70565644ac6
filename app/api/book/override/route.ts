import { randomUUID } from 'node:crypto';
import { overrideMark } from '../../../../lib/store/book/book-changes';
import { guarded } from '../../../access/guard';
import { overrideFields } from '../book-fields';

/** An instructor's own mark, with the reason, in the place of the marking. */
export const POST = guarded('POST /api/book/override', async ({ read, store, by }) => {
  await overrideMark(store, { id: randomUUID(), ...read(overrideFields) }, by);
});
