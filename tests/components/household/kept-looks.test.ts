import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { expect, test } from 'vitest';
import { openKeptLooks } from '../../../components/household/kept-looks';
import { hashOf, placeOfHash, STEPS } from '../../../components/household/look-place';
import type { Look } from '../../../lib/household/look';

const look = (id: string, changed: number): Look => ({
  version: 1,
  id,
  name: '',
  begun: 1,
  changed,
  way: 'finished',
  rules: 'canada',
  answers: { leans: 'no', bearing: 120 },
  calls: {},
});

test('looks are kept, found again by the latest change, put over and deleted', async () => {
  const kept = await openKeptLooks('one');
  await kept.put(look('a', 5));
  await kept.put(look('b', 7));
  expect(await kept.all()).toEqual([look('b', 7), look('a', 5)]);
  await kept.put(look('a', 9));
  expect((await kept.all()).map(({ id }) => id)).toEqual(['a', 'b']);
  await kept.remove('a');
  kept.close();
  expect(await (await openKeptLooks('one')).all()).toEqual([look('b', 7)]);
});

test('a record of a later version is neither shown nor lost', async () => {
  const kept = await openKeptLooks('two');
  await kept.put(look('a', 5));
  const db = await openDB('two', 1);
  await db.put('looks', { id: 'z', version: 9, sketch: 'round' });
  expect((await kept.all()).map(({ id }) => id)).toEqual(['a']);
  expect(await db.get('looks', 'z')).toEqual({ id: 'z', version: 9, sketch: 'round' });
});

test('the address leads back to the look and the step', () => {
  for (const step of STEPS) expect(placeOfHash(hashOf({ id: 'k3x9', step }))).toEqual({ id: 'k3x9', step });
});

test.each(['', '#', '#wrong', '#/k3x9', '#/k3x9/cellar', '#/../note'])('"%s" leads to the start', (hash) => {
  expect(placeOfHash(hash)).toBe(null);
});
