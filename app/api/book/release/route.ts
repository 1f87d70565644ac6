import { releaseWork } from '../../../../lib/store/book/book-changes';
import { guarded } from '../../../access/guard';
import { releaseFields } from '../book-fields';

/** Shows the results of a set work to its learners. */
export const POST = guarded('POST /api/book/release', async ({ read, store, by }) => {
  const { work } = read(releaseFields);
  return { released: await releaseWork(store, work, by) };
});
