import type { QrPath } from '../../components/desk/qr-code';
import { endStaffSessions, forgetLinks, staffById } from '../../lib/store/staff';
import { siteAddress } from '../request/address';
import { store } from '../server/store';
import { accounts } from './accounts';
import { hashOf, makeToken } from './codes';
import { hashSecret } from './passwords';
import { qrPath } from './qr-path';

const DAY_MS = 24 * 60 * 60_000;
/** How long a link works: an invitation is handed over on paper, a reset is asked for at the door. */
export const LINK_MS = { invitation: 7 * DAY_MS, reset: DAY_MS } as const;

/** A link with which its holder may choose this person's password, once. */
export async function makePasswordLink(
  headers: Headers,
  userId: string,
  kind: keyof typeof LINK_MS,
): Promise<{ readonly link: string; readonly days: number; readonly qr: QrPath }> {
  const token = makeToken();
  const { internalAdapter } = await (await accounts()).$context;
  await internalAdapter.createVerificationValue({
    identifier: identifierOf(token),
    value: userId,
    expiresAt: new Date(Date.now() + LINK_MS[kind]),
  });
  const link = `${siteAddress(headers)}/reset/${token}`;
  return { link, days: LINK_MS[kind] / DAY_MS, qr: qrPath(link) };
}

export interface LinkHolder {
  readonly userId: string;
  readonly name: string;
  readonly email: string;
}

/** Whose password this link is for; undefined when it was used, is too old, or never was. Does not use it up. */
export async function holderOf(token: string): Promise<LinkHolder | undefined> {
  const { internalAdapter } = await (await accounts()).$context;
  const value = await internalAdapter.findVerificationValue(identifierOf(token));
  return value && value.expiresAt.getTime() > Date.now() ? personOf(value.value) : undefined;
}

/** Uses the link up: the password is set; every other link and sign-in of this person is over. Undefined as with holderOf. */
export async function usePasswordLink(token: string, password: string): Promise<LinkHolder | undefined> {
  const { internalAdapter } = await (await accounts()).$context;
  const value = await internalAdapter.consumeVerificationValue(identifierOf(token));
  const holder = value ? await personOf(value.value) : undefined;
  if (!holder) return undefined;
  await setPassword(holder.userId, password);
  return holder;
}

/** Gives somebody a password. Their links are over with the old one, and their sessions but the one they keep. */
export async function setPassword(userId: string, password: string, keep?: string): Promise<void> {
  const { internalAdapter } = await (await accounts()).$context;
  const hashed = await hashSecret(password);
  if (await internalAdapter.findCredentialAccount(userId))
    await internalAdapter.updatePassword(userId, hashed);
  else {
    await internalAdapter.linkAccount({
      userId,
      providerId: 'credential',
      accountId: userId,
      password: hashed,
    });
  }
  const { db } = await store();
  await forgetLinks(db, userId);
  await endStaffSessions(db, userId, { except: keep });
}

/** Takes password, open links and sessions away. */
export async function shutOut(userId: string): Promise<void> {
  const { internalAdapter } = await (await accounts()).$context;
  await internalAdapter.deleteAccounts(userId);
  await forgetLinks((await store()).db, userId);
  await internalAdapter.deleteUserSessions(userId);
}

async function personOf(userId: string): Promise<LinkHolder | undefined> {
  const person = await staffById((await store()).db, userId);
  return person && { userId, ...person };
}

function identifierOf(token: string): string {
  return `password link ${hashOf(token)}`;
}
