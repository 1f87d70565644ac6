import { expect, test } from 'vitest';
import { addToRoster, rosterWithPins } from '../../../lib/store/groups/roster';
import { rosterOf } from '../../../lib/store/learners';
import { KINDS, ownDatabase, readyStore } from '../databases';
import { NOON, sampleGroup } from '../samples/sample-attempt';

test.each(KINDS)('a roster is in the order in which people look for a name, on %s', async (kind) => {
  const store = await readyStore(await ownDatabase(kind));
  const { group } = await sampleGroup(store);
  const rows = ['zoe', 'Élodie', 'Pupil 10', 'Pupil 2', 'Ecker', 'Ada'].map((name, index) => ({
    name,
    line: index + 1,
    timeFactor: 100,
  }));
  await addToRoster(store, group, rows, { actor: 'user teacher', at: NOON });
  const ordered = ['Ada', 'Ecker', 'Élodie', 'Pupil 2', 'Pupil 10', 'zoe'];
  expect((await rosterWithPins(store, group, NOON)).map(({ name }) => name)).toEqual(ordered);
  expect((await rosterOf(store.db, group)).map(({ name }) => name)).toEqual(ordered);
});
