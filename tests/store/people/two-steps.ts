import { expect, onTestFinished, vi } from 'vitest';
import { keyOf, totpOf } from '../../accounts/totp';
import type { PeopleSite, Visitor } from '../visitor';

export const ADA = { name: 'Ada Clay', email: 'ada@example.org', password: 'four red bricks' };
export const BEN = { name: 'Ben Stone', email: 'ben@example.org', password: 'mortar and lime 7' };
export const NOBODY = { kind: 'nobody' };

/** The clock stands: each code is asked for a minute later, so that none is the one before. */
export function stopClock(): void {
  vi.useFakeTimers({ toFake: ['Date'], now: Date.UTC(2026, 10, 30, 12) });
  onTestFinished(() => {
    vi.useRealTimers();
  });
}

export async function owner(site: PeopleSite): Promise<Visitor> {
  const visitor = site.newVisitor();
  await visitor.post('/api/people/set-up', { code: await site.startCode(), ...ADA });
  return visitor;
}

/** An instructor by a link of the owner. */
export async function ben(site: PeopleSite, ada: Visitor): Promise<Visitor> {
  const { name, email, password } = BEN;
  const { body } = await ada.post('/api/people/invite', { name, email });
  const visitor = site.newVisitor();
  await visitor.post('/api/people/new-password', { token: String(body.link).split('/').at(-1), password });
  return visitor;
}

interface Phone {
  readonly code: () => string;
  readonly recovery: readonly string[];
}

export async function setUp(visitor: Visitor, password: string): Promise<Phone> {
  const { body } = await visitor.post('/api/account/second-step/begin', { password });
  const { key: typed, codes } = body as { readonly key: string; readonly codes: readonly string[] };
  const key = keyOf(typed);
  const code = () => {
    vi.setSystemTime(Date.now() + 60_000);
    return totpOf(key, Date.now());
  };
  const turnedOn = await visitor.post('/api/account/second-step/confirm', { code: code() });
  expect(turnedOn.status).toBe(200);
  return { code, recovery: codes };
}

export async function afterPassword(site: PeopleSite, { email, password } = ADA): Promise<Visitor> {
  const visitor = site.newVisitor();
  await visitor.post('/api/people/sign-in', { email, password });
  return visitor;
}

export async function userOf(visitor: Visitor): Promise<string> {
  return ((await visitor.who()) as { userId: string }).userId;
}

export const pass = (visitor: Visitor, code: string) => visitor.post('/api/people/sign-in-code', { code });
