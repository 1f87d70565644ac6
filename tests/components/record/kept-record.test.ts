import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { beforeEach, describe, expect, test } from 'vitest';
import { hasPractised, ROUNDS_KEY } from '../../../components/record/has-practised';
import { type KeptRecord, openKeptRecord } from '../../../components/record/kept-record';
import { formatRecord as formatRounds } from '../../../lib/drills/quick/quick-record';
import { tieWall } from '../../lib/learning/samples';

let number = 0;
const named = () => `record ${number}`;

async function within<T>(work: (kept: KeptRecord) => Promise<T>): Promise<T> {
  const kept = await openKeptRecord(named());
  const result = await work(kept);
  kept.close();
  return result;
}

const idsNow = () => within(async (kept) => (await kept.all()).record.map(({ id }) => id));

beforeEach(() => {
  number += 1;
  localStorage.clear();
});

describe('the record on the device', () => {
  test('is there after the page was closed, in order of time', async () => {
    await within((kept) => kept.add([tieWall(2, 1, 'missed')]));
    await within((kept) => kept.add([tieWall(1, 0, 'found')]));
    expect(await idsNow()).toEqual(['a1', 'a2']);
  });

  test('is known to be there once something is in it', async () => {
    await within((kept) => kept.all());
    expect(hasPractised()).toBe(false);
    await within((kept) => kept.add([tieWall(1, 0, 'found')]));
    expect(hasPractised()).toBe(true);
  });

  test('takes the same attempt in once, and leaves the one it has as it is', async () => {
    await within((kept) => kept.add([tieWall(1, 0, 'found')]));
    await within((kept) => kept.add([{ ...tieWall(1, 0, 'missed') }, tieWall(3, 0, 'sound')]));
    const { record } = await within((kept) => kept.all());
    expect(record).toEqual([tieWall(1, 0, 'found'), tieWall(3, 0, 'sound')]);
  });

  test('keeps what a later version wrote, and does not count it', async () => {
    const db = await openDB(named(), 1, {
      upgrade: (made) => void made.createObjectStore('attempts', { keyPath: 'id' }),
    });
    const later = { version: 7, id: 'z', hologram: true };
    await db.put('attempts', later);
    db.close();
    await within((kept) => kept.add([tieWall(1, 0, 'found')]));
    expect(await within((kept) => kept.all())).toEqual({ record: [tieWall(1, 0, 'found')], later: [later] });
  });

  test('is gone once it is deleted', async () => {
    await within((kept) => kept.add([tieWall(1, 0, 'found')]));
    await within((kept) => kept.clear());
    expect(await idsNow()).toEqual([]);
    expect(hasPractised()).toBe(false);
  });
});

describe('rounds of quick looks from before there was a record', () => {
  const wall = { code: '3K7-Q2WF-9TB', faulty: true, saidFaulty: false };
  const round = {
    rules: 'canada',
    round: 7,
    look: 'face',
    level: 1,
    time: 30,
    walls: Array.from({ length: 10 }, () => wall),
  } as const;

  test('are taken over once, with every answer', async () => {
    localStorage.setItem(ROUNDS_KEY, formatRounds([round, { ...round, round: 8 }]));
    expect(await idsNow()).toEqual(['quick look canada 7 face 1', 'quick look canada 8 face 1']);
    const { record } = await within((kept) => kept.all());
    expect(record.map(({ kind }) => kind)).toEqual(['quick look', 'quick look']);
    expect(record[0]).toMatchObject({ round: 7, time: 30, walls: round.walls });
  });

  test('of version 1, which knew one sort only, are taken over too', async () => {
    const { look: _, level: __, ...old } = round;
    localStorage.setItem(ROUNDS_KEY, JSON.stringify({ version: 1, rounds: [old] }));
    expect(await idsNow()).toEqual(['quick look canada 7 face 1']);
  });

  test('that cannot be read are left as they are', async () => {
    localStorage.setItem(ROUNDS_KEY, '{"version":9}');
    expect(await idsNow()).toEqual([]);
    expect(localStorage.getItem(ROUNDS_KEY)).toBe('{"version":9}');
  });

  test('do not come back once the record is deleted', async () => {
    localStorage.setItem(ROUNDS_KEY, formatRounds([round]));
    await within((kept) => kept.clear());
    expect(await idsNow()).toEqual([]);
  });
});
