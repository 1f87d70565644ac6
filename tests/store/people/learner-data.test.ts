import { expect, test } from 'vitest';
import { learnerData } from '../../../lib/store/learner-data';
import { startLearnerSession } from '../../../lib/store/learner-sessions';
import { KINDS, ownDatabase, readyStore } from '../databases';
import { NOON, SAMPLE_WALLS, sampleAttempt } from '../samples/sample-attempt';

const HOUR = 3_600_000;
const isoOf = (at: number) => new Date(at).toISOString();

test.each(KINDS)(
  '%s: after the release, all that is kept of a learner’s work is in their data',
  async (kind) => {
    const store = await readyStore(await ownDatabase(kind));
    const { db } = store;
    const { attempt, learner, work } = await sampleAttempt(store);
    await db
      .updateTable('learner')
      .set({ name: 'Joan', time_factor: 125 })
      .where('id', '=', learner)
      .execute();
    await db.updateTable('set_work').set({ released_at: NOON }).where('id', '=', work).execute();
    await db
      .updateTable('attempt')
      .set({ state: 'released', handed_in_at: NOON + HOUR, late: 1 })
      .where('id', '=', attempt)
      .execute();
    await db
      .updateTable('attempt_wall')
      .set({
        marks:
          '[{"part":"A1.1","fault":"proud-unit","sure":2,"reading":6.5,"kind":"good practice","act":"leave"}]',
        readings: '[{"instrument":"joint-gauge"}]',
        says_sound: 1,
        opened: '["section"]',
        spent_ms: 90_000,
      })
      .where('attempt_id', '=', attempt)
      .where('place', '=', 1)
      .execute();
    await startLearnerSession(db, {
      tokenHash: 'hash',
      learnerId: learner,
      device: 'Firefox on Android',
      at: NOON,
    });
    const made = { made_by: 'user u1', made_at: NOON + 2 * HOUR };
    await db
      .insertInto('result_version')
      .values({
        ...made,
        ...{ attempt_id: attempt, version: 1, engine: '3', score: 0.5, reason: 'handed in' },
        results: '[{"score":0.5}]',
      })
      .execute();
    await db
      .insertInto('override_mark')
      .values({ ...made, id: 'o1', attempt_id: attempt, score: 0.75, reason: 'said it aloud' })
      .execute();
    await db
      .insertInto('comment')
      .values({ ...made, id: 'c1', attempt_id: attempt, text: 'Look at the heads again.' })
      .execute();

    const left = { marks: [], readings: [], saysSound: false, opened: [], spentMs: 0 };
    const looked = {
      marks: [
        { part: 'A1.1', fault: 'proud-unit', sure: 2, reading: 6.5, kind: 'good practice', act: 'leave' },
      ],
      readings: [{ instrument: 'joint-gauge' }],
      saysSound: true,
      opened: ['section'],
      spentMs: 90_000,
    };
    const twoLater = { made: '2026-11-25T14:00:00.000Z' };
    expect(await learnerData(db, learner, NOON + 3 * HOUR, isoOf)).toEqual({
      format: 'read-the-wall learner data',
      version: 1,
      name: 'Joan',
      group: 'Tuesday',
      joined: '2026-11-25T12:00:00.000Z',
      timeFactorPercent: 125,
      signedIn: [{ device: 'Firefox on Android', since: '2026-11-25T12:00:00.000Z' }],
      attempts: [
        {
          work: 'First walls',
          number: 1,
          state: 'released',
          started: '2026-11-25T12:00:00.000Z',
          handedIn: '2026-11-25T13:00:00.000Z',
          late: true,
          used: [],
          walls: SAMPLE_WALLS.map(({ place, code }) => ({ place, code, ...(place === 1 ? looked : left) })),
          results: [{ ...twoLater, version: 1, score: 0.5, reason: 'handed in', walls: [{ score: 0.5 }] }],
          overrides: [{ ...twoLater, score: 0.75, reason: 'said it aloud' }],
          comments: [{ ...twoLater, text: 'Look at the heads again.' }],
        },
      ],
    });
  },
);
