import { endLearnerSessions } from '../../../../lib/store/learner-sessions';
import { guarded } from '../../../access/guard';

/** Signs a learner out on all other devices. */
export const POST = guarded('POST /api/join/end-sessions', async ({ person, store, at }) => {
  await endLearnerSessions(store.db, person.learnerId, at, person.tokenHash);
});
