import { guarded } from '../../../access/guard';
import { noteInTrail } from '../../../accounts/note-in-trail';
import { makePasswordLink } from '../../../accounts/password-links';
import { staffMember } from '../staff-member';

/** A link with which somebody chooses a new password. What they have works until they do. */
export const POST = guarded(
  'POST /api/people/reset-link',
  async ({ request: { headers }, person, body, store, at }) => {
    const { userId, name } = await staffMember(store, body);
    await noteInTrail(store, {
      at,
      actor: `user ${person.userId}`,
      action: 'made a reset link',
      subject: `user ${userId}`,
    });
    return Response.json({ ok: true, name, ...(await makePasswordLink(headers, userId, 'reset')) });
  },
);
