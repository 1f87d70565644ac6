import { guarded } from '../../../access/guard';
import { noteInTrail } from '../../../accounts/note-in-trail';
import { makePasswordLink } from '../../../accounts/password-links';
import { staffMember } from '../staff-member';

/** A link with which somebody chooses a new password. What they have works until they do. */
export const POST = guarded(
  'POST /api/people/reset-link',
  async ({ request: { headers }, body, store, by }) => {
    const { userId, name } = await staffMember(store, body);
    await noteInTrail(store, by, 'made a reset link', `user ${userId}`);
    return { name, ...(await makePasswordLink(headers, userId, 'reset')) };
  },
);
