import { expect, test } from 'vitest';
import { failOver } from '../kills/fail-over';

const HAND_INS = 60;

/** Four hundred of them and ten failures: npm run bench -- failover. */
test('three processes of the built site, of which one is killed, and a database that a standby takes the place of: every hand-in is there once', async () => {
  const { askedBack, ...outcome } = await failOver(HAND_INS, [
    'a site is killed',
    'the database falls silent',
  ]);
  // Those under way when the database fell silent.
  expect(askedBack).toBeGreaterThan(0);
  expect(outcome).toEqual({
    acknowledged: HAND_INS,
    acknowledgedByOne: 0,
    lost: [],
    halfWritten: [],
    trailIsWhole: true,
  });
});
