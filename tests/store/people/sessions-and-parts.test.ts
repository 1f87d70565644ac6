import { expect, test } from 'vitest';
import {
  endLearnerSessions,
  LEARNER_SESSION_MS,
  learnerSessions,
  startLearnerSession,
} from '../../../lib/store/learner-sessions';
import { partIn } from '../../../lib/store/record-owner';
import { addCoInstructor } from '../../../lib/store/staff';
import { KINDS, ownDatabase, readyStore } from '../databases';
import { NOON, sampleAttempt } from '../samples/sample-attempt';

test.each(KINDS)(
  'ending all sessions but one leaves that one, and those of others that still run, on %s',
  async (kind) => {
    const store = await readyStore(await ownDatabase(kind));
    const [ann, ben] = [await sampleAttempt(store), await sampleAttempt(store)];
    const begin = (tokenHash: string, learnerId: string, at: number) =>
      startLearnerSession(store.db, { tokenHash, learnerId, device: tokenHash, at });
    await begin('ann, here', ann.learner, NOON);
    await begin('ann, lost phone', ann.learner, NOON);
    await begin('ben, runs out now', ben.learner, NOON - LEARNER_SESSION_MS);
    await begin('ben, runs a moment more', ben.learner, NOON - LEARNER_SESSION_MS + 1);
    await endLearnerSessions(store.db, ann.learner, NOON, 'ann, here');
    const left = await store.db
      .selectFrom('learner_session')
      .select('token_hash')
      .orderBy('token_hash')
      .execute();
    expect(left.map((row) => row.token_hash)).toEqual(['ann, here', 'ben, runs a moment more']);
    // One that ends at this very moment is not listed as running.
    expect(await learnerSessions(store.db, ben.learner, NOON + 1)).toEqual([]);
    expect((await learnerSessions(store.db, ben.learner, NOON)).map(({ device }) => device)).toEqual([
      'ben, runs a moment more',
    ]);
  },
);

test.each(KINDS)('an instructor has a part in their own groups only, on %s', async (kind) => {
  const store = await readyStore(await ownDatabase(kind));
  const [own, other] = [await sampleAttempt(store), await sampleAttempt(store)];
  for (const id of ['lee', 'cob', 'far']) {
    const now = new Date(NOON).toISOString();
    await store.db
      .insertInto('user')
      .values({
        id,
        name: id,
        email: `${id}@example.org`,
        emailVerified: kind === 'postgres' ? false : 0,
        image: null,
        createdAt: now,
        updatedAt: now,
        role: 'instructor',
      })
      .execute();
  }
  await store.db
    .insertInto('group_instructor')
    .values([
      { group_id: own.group, user_id: 'lee', part: 'lead' },
      { group_id: other.group, user_id: 'far', part: 'lead' },
    ])
    .execute();
  await addCoInstructor(store.db, own.group, 'cob');
  await addCoInstructor(store.db, own.group, 'lee');
  expect(await partIn(store.db, own.group, 'lee')).toBe('lead');
  expect(await partIn(store.db, own.group, 'cob')).toBe('co');
  expect(await partIn(store.db, own.group, 'far')).toBeUndefined();
  expect(await partIn(store.db, other.group, 'lee')).toBeUndefined();
});
