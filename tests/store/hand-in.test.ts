import { randomUUID } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { formatResults } from '../../lib/exercise/stored-results';
import { verifyAudit } from '../../lib/store/audit';
import type { Store } from '../../lib/store/database';
import { HandInError, type HandInRefusal } from '../../lib/store/hand-in';
import type { Receipt } from '../../lib/store/receipt';
import { runChild } from '../kills/children';
import { KINDS, ownDatabase, readyStore } from './databases';
import {
  DUE,
  GRACE_MS,
  HALF,
  NOON,
  recordAsDevice,
  recordHandIn,
  sampleAnswers,
  sampleAttempt,
  sampleHandIn,
} from './samples/sample-attempt';

describe.each(KINDS)('%s: handing in', (kind) => {
  const ready = async () => {
    const store = await readyStore(await ownDatabase(kind));
    return { store, mine: await sampleAttempt(store) };
  };

  test('keeps answers, result, receipt and audit entry', async () => {
    const { store, mine } = await ready();
    const handIn = sampleHandIn(mine);
    const receipt = await recordHandIn(store, handIn);
    expect(receipt).toEqual({
      receipt: expect.stringMatching(/^([2-9A-HJ-NP-Z]{4}-){2}[2-9A-HJ-NP-Z]{4}$/),
      attempt: mine.attempt,
      handedInAt: NOON + 1000,
      late: false,
      replay: false,
    });
    expect(await attemptOf(store, mine.attempt)).toMatchObject({
      state: 'marked',
      handed_in_at: NOON + 1000,
      late: 0,
      hand_in_key: handIn.key,
    });
    const walls = await store.db.selectFrom('attempt_wall').selectAll().orderBy('place').execute();
    expect(walls.map(({ marks, says_sound, spent_ms }) => ({ marks, says_sound, spent_ms }))).toEqual([
      { marks: '[{"part":"A1.1","fault":"proud-unit","sure":2}]', says_sound: 0, spent_ms: 1000 },
      { marks: '[{"part":"A1.1","fault":"proud-unit","sure":2}]', says_sound: 0, spent_ms: 2000 },
    ]);
    const result = await store.db.selectFrom('result_version').selectAll().executeTakeFirstOrThrow();
    expect(result).toMatchObject({
      version: 1,
      engine: '1',
      score: 0.5,
      results: formatResults(HALF.results),
    });
    const entry = await store.db.selectFrom('audit').selectAll().executeTakeFirstOrThrow();
    expect(entry).toMatchObject({
      actor: `learner ${mine.learner}`,
      action: 'handed in',
      subject: `attempt ${mine.attempt}`,
    });
    expect(JSON.parse(entry.detail)).toMatchObject({ receipt: receipt.receipt, late: false, score: 0.5 });
  });

  test('the same key again gives the same receipt and changes nothing, months later too', async () => {
    const { store, mine } = await ready();
    const handIn = sampleHandIn(mine);
    const first = await recordHandIn(store, handIn);
    const again = await recordHandIn(store, { ...handIn, at: DUE + 90 * 86_400_000 });
    expect(again).toEqual({ ...first, replay: true });
    expect(await countsOf(store)).toEqual({ results: 1, entries: 1 });
  });

  test('the same key fifty times at once: one is taken, 49 get its receipt', async () => {
    const { store, mine } = await ready();
    const handIn = sampleHandIn(mine);
    const all = await Promise.all(Array.from({ length: 50 }, () => recordAsDevice(store, handIn)));
    expect(all.filter(({ replay }) => !replay)).toHaveLength(1);
    expect(new Set(all.map(({ receipt }) => receipt)).size).toBe(1);
    expect(await countsOf(store)).toEqual({ results: 1, entries: 1 });
  });

  test('the same key ten times from each of four server processes: one is taken, 39 get its receipt', async () => {
    const settings = await ownDatabase(kind);
    const store = await readyStore(settings);
    const { attempt, learner } = await sampleAttempt(store);
    const key = randomUUID();
    const told = await Promise.all(
      [1, 2, 3, 4].map(() => runChild('same-hand-in', settings, attempt, learner, key)),
    );
    const receipts = told.flatMap((line) => JSON.parse(line) as Receipt[]);
    expect(receipts).toHaveLength(40);
    expect(receipts.filter(({ replay }) => !replay)).toHaveLength(1);
    expect(new Set(receipts.map(({ receipt }) => receipt)).size).toBe(1);
    expect(await countsOf(store)).toEqual({ results: 1, entries: 1 });
  });

  test('two tabs with different answers at once: one is taken, the other is told of it', async () => {
    const { store, mine } = await ready();
    const ends = await Promise.allSettled([1, 2].map(() => recordAsDevice(store, sampleHandIn(mine))));
    const [taken] = ends.flatMap((end) => (end.status === 'fulfilled' ? [end.value] : []));
    const [refused] = ends.flatMap((end) => (end.status === 'rejected' ? [end.reason as HandInError] : []));
    expect(refused?.refusal).toBe('already handed in');
    expect(refused?.earlier?.receipt).toBe(taken?.receipt);
    expect(await countsOf(store)).toEqual({ results: 1, entries: 1 });
  });

  // The server's clock, ends belong: due at DUE, a minute's grace.
  test.each([
    ['at the due time', DUE, 100, '{}', false],
    ['at the end of the grace', DUE + GRACE_MS, 100, '{}', false],
    ['one millisecond later', DUE + GRACE_MS + 1, 100, '{}', true],
    ['a week later, from a phone that was off', DUE + 604_800_000, 100, '{}', true],
    ['at the end of ten minutes and the grace', NOON + 600_000 + GRACE_MS, 100, '{"minutes":10}', false],
    ['after ten minutes and the grace', NOON + 600_001 + GRACE_MS, 100, '{"minutes":10}', true],
    ['the same, with half as much time again', NOON + 600_001 + GRACE_MS, 150, '{"minutes":10}', false],
  ])('%s', async (_, at, timeFactor, spec, late) => {
    const { store, mine } = await ready();
    await store.db.updateTable('learner').set({ time_factor: timeFactor }).execute();
    await store.db.updateTable('set_work').set({ spec }).execute();
    expect(await recordHandIn(store, sampleHandIn(mine, { at }))).toMatchObject({ late });
  });

  test('the due time moved while the phone was off: the one that stands now counts', async () => {
    const { store, mine } = await ready();
    await store.db.updateTable('set_work').set({ due_at: null, state: 'closed' }).execute();
    expect(await recordHandIn(store, sampleHandIn(mine, { at: DUE * 2 }))).toMatchObject({ late: false });
  });

  test('walls that cannot be laid again: kept, not marked', async () => {
    const { store, mine } = await ready();
    await recordHandIn(store, sampleHandIn(mine, { grade: () => null }));
    expect(await attemptOf(store, mine.attempt)).toMatchObject({ state: 'handed in' });
    expect(await countsOf(store)).toEqual({ results: 0, entries: 1 });
  });

  test('a failure while marking or half way through writing leaves the attempt open', async () => {
    const { store, mine } = await ready();
    const stuck = sampleHandIn(mine, {
      grade: () => {
        throw new Error('no such part');
      },
    });
    await expect(recordHandIn(store, stuck)).rejects.toThrow('no such part');
    // A score the table refuses, after answers and state were written.
    const wrong = sampleHandIn(mine, { grade: () => ({ ...HALF, score: 1.5 }) });
    await expect(recordHandIn(store, wrong)).rejects.toThrow(/check/i);
    expect(await attemptOf(store, mine.attempt)).toMatchObject({ state: 'open', hand_in_key: null });
    const walls = await store.db.selectFrom('attempt_wall').select('marks').execute();
    expect(walls).toEqual([{ marks: '[]' }, { marks: '[]' }]);
    expect(await countsOf(store)).toEqual({ results: 0, entries: 0 });
    expect(await recordHandIn(store, sampleHandIn(mine))).toMatchObject({ replay: false });
  });

  test('what is not taken, and why', async () => {
    const { store, mine } = await ready();
    const other = await sampleAttempt(store);
    const used = sampleHandIn(other);
    await recordHandIn(store, used);
    const [first, second] = sampleAnswers();
    const rows: readonly (readonly [HandInRefusal, Parameters<typeof sampleHandIn>[1]])[] = [
      ['not found', { attempt: randomUUID() }],
      ['not found', { attempt: other.attempt }],
      ['key used', { key: used.key }],
      ['other walls', { walls: [] }],
      ['other walls', { walls: first ? [first, first] : [] }],
      [
        'other walls',
        { walls: first && second ? [first, { ...second, fingerprint: '0000000000000000' }] : [] },
      ],
      ['other walls', { walls: first && second ? [first, { ...second, place: 3 }] : [] }],
    ];
    for (const [refusal, changes] of rows) {
      const error = await recordHandIn(store, sampleHandIn(mine, changes)).catch((thrown: unknown) => thrown);
      expect(error).toBeInstanceOf(HandInError);
      expect((error as HandInError).refusal).toBe(refusal);
    }
    expect(await attemptOf(store, mine.attempt)).toMatchObject({ state: 'open' });
    // The same key with other answers is not the same hand-in.
    const changed = sampleHandIn(other, {
      key: used.key,
      walls: sampleAnswers().map((w) => ({ ...w, spentMs: 1 })),
    });
    await expect(recordHandIn(store, changed)).rejects.toThrow('This key was used for another hand-in.');
    expect(await verifyAudit(store.db)).toEqual({ ok: true });
  });
});

async function attemptOf({ db }: Store, id: string) {
  return db.selectFrom('attempt').selectAll().where('id', '=', id).executeTakeFirstOrThrow();
}

async function countsOf({ db }: Store) {
  const results = await db.selectFrom('result_version').select('version').execute();
  const entries = await db.selectFrom('audit').select('seq').execute();
  return { results: results.length, entries: entries.length };
}
