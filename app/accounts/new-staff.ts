import { staffByEmail } from '../../lib/store/staff';
import { wrongField } from '../request/refusal';
import { store } from '../server/store';
import { accounts } from './accounts';
import { noteInTrail } from './note-in-trail';

interface NewStaff {
  readonly name: string;
  readonly email: string;
  readonly role: 'owner' | 'instructor';
  /** Who made the account; left out when they made their own. */
  readonly by?: string;
  readonly at: number;
}

/** Makes an account without a password and gives its id. @throws Refusal when the e-mail has one already. */
export async function makeStaff({ name, email, role, by, at }: NewStaff): Promise<string> {
  const opened = await store();
  const { db } = opened;
  const taken = () =>
    wrongField('email', 'This e-mail has an account already. Make a new link for it in the list below.');
  if (await staffByEmail(db, email)) throw taken();
  const { internalAdapter } = await (await accounts()).$context;
  const user = await internalAdapter
    .createUser({ name, email, emailVerified: false, role }, { method: 'email-password' })
    .catch(async (error: unknown) => {
      // Somebody else was a moment quicker: the table allows each e-mail once.
      throw (await staffByEmail(db, email)) ? taken() : error;
    });
  const actor = `user ${by ?? user.id}`;
  await noteInTrail(opened, { actor, at }, role === 'owner' ? 'became owner' : 'invited', `user ${user.id}`);
  return user.id;
}
