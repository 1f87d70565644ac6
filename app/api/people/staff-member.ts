import * as z from 'zod';
import type { Store } from '../../../lib/store/database';
import { staffById } from '../../../lib/store/staff';
import { parseFields, Refusal } from '../../request/refusal';

const fields = z.strictObject({ user: z.string() });

/** The instructor or owner whom a body of `{ user }` names. @throws Refusal when there is none. */
export async function staffMember(store: Store, body: unknown) {
  const { user } = parseFields(fields, body);
  const member = await staffById(store.db, user);
  if (!member) throw new Refusal(404, 'Nobody here has this account.');
  return { userId: user, name: member.name };
}
