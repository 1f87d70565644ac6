import { createHash } from 'node:crypto';
import { sql } from 'kysely';
import { describe, expect, test } from 'vitest';
import { appendAudit, verifyAudit } from '../../lib/store/audit';
import type { Store } from '../../lib/store/database';
import { runChild } from '../kills/children';
import { KINDS, ownDatabase, readyStore } from './databases';
import { NOON } from './samples/sample-attempt';

const ENTRY = { at: NOON, actor: 'user 1', action: 'released', subject: 'attempt 1', detail: { score: 0.5 } };

async function write(store: Store, entries: number): Promise<void> {
  for (let n = 0; n < entries; n += 1) {
    await store.db.transaction().execute((trx) => appendAudit(trx, store.kind, { ...ENTRY, detail: { n } }));
  }
}

describe.each(KINDS)('%s: audit trail', (kind) => {
  test('an entry is hashed as written down here', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const row = await store.db.transaction().execute((trx) => appendAudit(trx, store.kind, ENTRY));
    const previous = '0000000000000000000000000000000000000000000000000000000000000000';
    const text = `[1,1795608000000,"user 1","released","attempt 1","{\\"score\\":0.5}","${previous}"]`;
    expect(row.hash).toBe(createHash('sha256').update(text).digest('hex'));
  });

  test('nobody changes, deletes or empties it', async () => {
    const store = await readyStore(await ownDatabase(kind));
    await write(store, 2);
    for (const statement of ['update audit set actor = actor', 'delete from audit']) {
      await expect(sql.raw(statement).execute(store.db)).rejects.toThrow('the audit trail is only added to');
    }
    expect(await verifyAudit(store.db)).toEqual({ ok: true });
  });

  // Whoever owns the database file can take the triggers away. Then the chain tells.
  test('one changed sign in any column is found', async () => {
    const store = await readyStore(await ownDatabase(kind));
    await write(store, 5);
    await dropGuards(store);
    const whole = await store.db
      .selectFrom('audit')
      .selectAll()
      .where('seq', '=', 3)
      .executeTakeFirstOrThrow();
    for (const column of ['at', 'actor', 'action', 'subject', 'detail', 'previous', 'hash'] as const) {
      const changed = column === 'at' ? whole.at + 1 : `${whole[column].slice(0, -1)}~`;
      await sql`update audit set ${sql.ref(column)} = ${changed} where seq = 3`.execute(store.db);
      expect([column, await verifyAudit(store.db)]).toEqual([column, { ok: false, seq: 3 }]);
      await sql`update audit set ${sql.ref(column)} = ${whole[column]} where seq = 3`.execute(store.db);
    }
    expect(await verifyAudit(store.db)).toEqual({ ok: true });
  });

  test('an entry taken out is found at the next one, an entry put in at itself', async () => {
    const store = await readyStore(await ownDatabase(kind));
    await write(store, 5);
    await dropGuards(store);
    await sql`delete from audit where seq = 2`.execute(store.db);
    expect(await verifyAudit(store.db)).toEqual({ ok: false, seq: 3 });
    await sql`insert into audit select 2, at, actor, action, subject, detail, previous, hash from audit where seq = 3`.execute(
      store.db,
    );
    expect(await verifyAudit(store.db)).toEqual({ ok: false, seq: 2 });
  });

  test('a trail longer than one page is followed to its end', async () => {
    const store = await readyStore(await ownDatabase(kind));
    await store.db.transaction().execute(async (trx) => {
      for (let n = 0; n < 1_100; n += 1) await appendAudit(trx, store.kind, { ...ENTRY, detail: n });
    });
    expect(await verifyAudit(store.db)).toEqual({ ok: true });
    await dropGuards(store);
    await sql`update audit set detail = '1050' where seq = 1050`.execute(store.db);
    expect(await verifyAudit(store.db)).toEqual({ ok: false, seq: 1050 });
  });

  test('four processes writing at once make one chain', async () => {
    const settings = await ownDatabase(kind);
    const store = await readyStore(settings);
    await Promise.all([1, 2, 3, 4].map(() => runChild('audit', settings, '25')));
    expect(await verifyAudit(store.db)).toEqual({ ok: true });
    expect(await store.db.selectFrom('audit').select('seq').execute()).toHaveLength(100);
  });
});

async function dropGuards({ db, kind }: Store): Promise<void> {
  const names = ['audit_no_update', 'audit_no_delete'];
  for (const name of names)
    await sql.raw(`drop trigger ${name}${kind === 'postgres' ? ' on audit' : ''}`).execute(db);
}
