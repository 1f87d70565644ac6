import { guarded } from '../../../access/guard';
import { answerWith, endSessions } from '../../../accounts/sessions';

/** Ends whichever sign-in the browser has. What the learner's device keeps (drafts, work not yet sent) stays there. */
export const POST = guarded('POST /api/people/sign-out', async ({ request: { headers } }) =>
  answerWith({ ok: true, go: '/' }, await endSessions(headers)),
);
