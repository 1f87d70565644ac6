import { symmetricEncrypt } from 'better-auth/crypto';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { KINDS } from '../databases';
import { openPeople } from '../visitor';
import { ADA, afterPassword, owner, pass, setUp, stopClock } from './two-steps';

beforeEach(stopClock);

describe.each(KINDS)('recovery codes, on %s', (kind) => {
  test('sign in once each, however it is typed, and the trail says so', async () => {
    const site = await openPeople(kind);
    const { recovery } = await setUp(await owner(site), ADA.password);
    const typed = (recovery[3] ?? '').toLowerCase().replace('-', ' ');
    const visitor = await afterPassword(site);
    expect([(await pass(visitor, typed)).status, await visitor.who()]).toMatchObject([
      200,
      { kind: 'owner' },
    ]);
    vi.setSystemTime(Date.now() + 300_000);
    const again = await afterPassword(site);
    expect((await pass(again, typed)).status).toBe(422);
    expect((await pass(again, recovery[4] ?? '')).status).toBe(200);
    const trail = await site.store.db.selectFrom('audit').select('action').orderBy('seq').execute();
    expect(trail.map(({ action }) => action).slice(-3)).toEqual([
      'turned the second step on',
      'used a recovery code',
      'used a recovery code',
    ]);
  });

  test('are kept scrambled, each by itself; new ones take the place of the old with the password only', async () => {
    const site = await openPeople(kind);
    const ada = await owner(site);
    const old = await setUp(ada, ADA.password);
    const kept = await site.store.db.selectFrom('twoFactor').select('backupCodes').executeTakeFirstOrThrow();
    const scrambled = JSON.parse(kept.backupCodes) as readonly string[];
    expect(scrambled.filter((each) => /^\$argon2id\$v=19\$m=19456,t=2,p=1\$/.test(each))).toHaveLength(10);
    const salts = scrambled.map((each) => each.split('$')[4]);
    expect(new Set(salts).size).toBe(10);

    const makeNew = (password: string) => ada.post('/api/account/second-step/new-codes', { password });
    expect((await makeNew('not the password')).status).toBe(422);
    const made = (await makeNew(ADA.password)).body.codes as readonly string[];
    expect([new Set(made).size, made.filter((code) => old.recovery.includes(code))]).toEqual([10, []]);
    const visitor = await afterPassword(site);
    expect((await pass(visitor, old.recovery[0] ?? '')).status).toBe(422);
    expect((await pass(visitor, made[0] ?? '')).status).toBe(200);
    await ada.post('/api/account/second-step/turn-off', { password: ADA.password });
    expect((await ada.post('/api/account/second-step/new-codes', { password: ADA.password })).status).toBe(
      409,
    );
  });

  test('that an earlier release kept encrypted go on working, and are scrambled once one is used', async () => {
    const site = await openPeople(kind);
    await setUp(await owner(site), ADA.password);
    const { accounts } = await import('../../../app/accounts/accounts');
    const { secretConfig } = await (await accounts()).$context;
    const data = JSON.stringify(['AAAA-1111', 'BBBB-2222']);
    const backupCodes = await symmetricEncrypt({ key: secretConfig, data });
    await site.store.db.updateTable('twoFactor').set({ backupCodes }).execute();
    expect((await pass(await afterPassword(site), 'AAAA-1111')).status).toBe(200);
    const after = await site.store.db.selectFrom('twoFactor').select('backupCodes').executeTakeFirstOrThrow();
    expect(after.backupCodes).toMatch(/^\["\$argon2id\$[^"]+"\]$/);
    expect((await pass(await afterPassword(site), 'BBBB-2222')).status).toBe(200);
  });
});
