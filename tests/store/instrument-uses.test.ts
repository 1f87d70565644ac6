import { describe, expect, test } from 'vitest';
import { lift, liftedOff, noteUse, usesOf } from '../../lib/store/instrument-uses';
import { RefusedChange } from '../../lib/store/store-problem';
import { KINDS, ownDatabase, readyStore } from './databases';
import { NOON, recordHandIn, sampleAttempt, sampleHandIn } from './samples/sample-attempt';

describe.each(KINDS)('%s: what is used on a wall that the site draws', (kind) => {
  const ready = async () => {
    const store = await readyStore(await ownDatabase(kind));
    const mine = await sampleAttempt(store);
    return { store, mine, on: { attempt: mine.attempt, place: 1 } };
  };

  test('of twenty units lifted at once no more come off than may', async () => {
    const { store, on } = await ready();
    const lifts = await Promise.allSettled(
      Array.from({ length: 20 }, (_, at) => lift(store, on, `A2.${at + 1}`, 3, NOON + at)),
    );
    expect(await liftedOff(store, on)).toHaveLength(3);
    const refused = lifts.flatMap((each) => (each.status === 'rejected' ? [each.reason] : []));
    expect(refused).toHaveLength(17);
    for (const reason of refused) expect(reason).toBeInstanceOf(RefusedChange);
  });

  test('a unit lifted twice counts once, and a neighbouring wall has its own', async () => {
    const { store, on } = await ready();
    await lift(store, on, 'A2.1', 1, NOON);
    await lift(store, on, 'A2.1', 1, NOON + 1);
    await lift(store, { ...on, place: 2 }, 'A2.1', 1, NOON + 2);
    expect(await liftedOff(store, on)).toEqual(['A2.1']);
    await expect(lift(store, on, 'A2.2', 1, NOON + 3)).rejects.toThrow('You have lifted all 1 that you may.');
  });

  test('nothing is lifted or noted once the work is handed in', async () => {
    const { store, mine, on } = await ready();
    await recordHandIn(store, sampleHandIn(mine));
    await expect(lift(store, on, 'A2.1', 8, NOON + 2000)).rejects.toBeInstanceOf(RefusedChange);
    await expect(noteUse(store, on, { used: 'tape', part: 'A2.1' }, NOON + 2000)).rejects.toBeInstanceOf(
      RefusedChange,
    );
    expect(await usesOf(store, mine.attempt)).toEqual([]);
  });
});
