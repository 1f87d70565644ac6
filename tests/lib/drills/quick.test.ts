import { describe, expect, test } from 'vitest';
import { formatBegun, parseBegun } from '../../../lib/drills/quick/begun-round';
import { QUICK_LEVELS, QUICK_LOOKS, type QuickSort } from '../../../lib/drills/quick/quick-look';
import {
  formatRecord,
  isCounted,
  parseRecord,
  QUICK_RECORD_VERSION,
  type QuickRound,
  withRound,
} from '../../../lib/drills/quick/quick-record';
import {
  askOf,
  QUICK_START,
  type QuickAction,
  quickReducer,
  WALLS_A_ROUND,
} from '../../../lib/drills/quick/quick-round';

const SORT = { look: 'close', level: 3 } as const;
const PLACES = Array.from({ length: WALLS_A_ROUND }, (_, place) => place);

describe('what a round asks for', () => {
  test('four to six of ten walls are faulty, and in the long run half', () => {
    const counts = Array.from(
      { length: 300 },
      (_, round) => PLACES.filter((place) => askOf({ ...SORT, round }, place, 999).faulty).length,
    );
    expect([...new Set(counts)].sort()).toEqual([4, 5, 6]);
    const share = counts.reduce((sum, count) => sum + count, 0) / 3000;
    expect(Math.abs(share - 0.5)).toBeLessThan(0.02);
  });

  test('no place is faulty more often than another', () => {
    for (const place of PLACES) {
      const faulty = Array.from(
        { length: 400 },
        (_, round) => askOf({ ...SORT, round }, place, 999).faulty,
      ).filter((each) => each).length;
      // Five standard deviations of 400 throws of a coin are 50.
      expect(Math.abs(faulty - 200), `place ${place}`).toBeLessThan(50);
    }
  });

  test('one number asks for other walls of each sort, and from in front, easy, for those it always did', () => {
    const seeds = (sort: QuickSort) =>
      PLACES.map((place) => askOf({ ...sort, round: 7 }, place, 134_217_727).seed);
    const all = QUICK_LOOKS.flatMap((look) => QUICK_LEVELS.map((level) => seeds({ look, level })));
    expect(new Set(all.flat()).size).toBe(120);
    // The round of this number as it was before there were sorts.
    expect(seeds({ look: 'face', level: 1 })[0]).toBe(28_693_952);
  });

  test('the same round asks the same, another asks for other walls', () => {
    const seeds = (round: number) =>
      PLACES.map((place) => askOf({ ...SORT, round }, place, 134_217_727).seed);
    expect(seeds(7)).toEqual(seeds(7));
    expect(new Set([...seeds(7), ...seeds(8)]).size).toBe(20);
  });
});

describe('a round', () => {
  const reached = (...actions: readonly QuickAction[]) => actions.reduce(quickReducer, QUICK_START);

  test('covers the wall when its time is up, and still takes the answer', () => {
    const covered = reached(
      { kind: 'choose time', time: 10 },
      { kind: 'start' },
      { kind: 'pass', ms: 9_999 },
      { kind: 'pass', ms: 2 },
    );
    expect(covered).toMatchObject({ phase: 'covered', left: 0, answers: [] });
    expect(quickReducer(covered, { kind: 'answer', faulty: true })).toMatchObject({
      phase: 'looking',
      left: 10_000,
      answers: [true],
    });
  });

  test('lets no time go by while it is paused, and none at all without a clock', () => {
    const paused = reached({ kind: 'start' }, { kind: 'pause', paused: true }, { kind: 'pass', ms: 60_000 });
    expect(paused).toMatchObject({ phase: 'looking', left: 30_000 });
    const free = reached(
      { kind: 'choose time', time: null },
      { kind: 'start' },
      { kind: 'pass', ms: 9_000_000 },
    );
    expect(free).toMatchObject({ phase: 'looking', left: null });
  });

  test('is over after ten answers, and takes no more', () => {
    const answers = PLACES.map((): QuickAction => ({ kind: 'answer', faulty: false }));
    const over = reached({ kind: 'start' }, ...answers);
    expect(over.phase).toBe('over');
    expect(quickReducer(over, { kind: 'answer', faulty: true }).answers).toHaveLength(10);
  });
});

describe('a round broken off', () => {
  const begun = { time: 20, answers: [true, false, true] } as const;

  test('is read as it was written, and goes on where it was', () => {
    expect(parseBegun(formatBegun(begun))).toEqual(begun);
    const state = quickReducer(quickReducer(QUICK_START, { kind: 'take up', begun }), { kind: 'start' });
    expect(state).toMatchObject({ phase: 'looking', left: 20_000, answers: begun.answers });
  });

  test.each([
    ['nothing kept', null],
    ['not begun', formatBegun({ time: 20, answers: [] })],
    ['over', formatBegun({ time: 20, answers: PLACES.map(() => true) })],
    ['another time', '{"version":1,"time":15,"answers":[true]}'],
    ['later version', '{"version":2,"time":20,"answers":[true]}'],
    ['other answers', '{"version":1,"time":20,"answers":[1]}'],
    ['no text of ours', '{'],
  ])('is not taken up: %s', (_, text) => {
    expect(parseBegun(text)).toBe(null);
  });
});

const ROUND: QuickRound = {
  rules: 'canada',
  round: 7,
  look: 'face',
  level: 1,
  time: null,
  walls: PLACES.map((place) => ({ code: `3K7-Q2WF-9T${place}`, faulty: place < 5, saidFaulty: place < 6 })),
};

/** One true sample of every version ever released. */
const SAMPLES: readonly (readonly [version: number, text: string])[] = [
  // Before there were other looks than from in front.
  [1, JSON.stringify({ version: 1, rounds: [{ ...ROUND, look: undefined, level: undefined }] })],
  [2, JSON.stringify({ version: 2, rounds: [ROUND] })],
];

describe('the record on the device', () => {
  test('has a sample of every version', () => {
    expect(SAMPLES.map(([version]) => version)).toEqual(
      Array.from({ length: QUICK_RECORD_VERSION }, (_, at) => at + 1),
    );
  });

  test.each(SAMPLES)('of version %i is read', (_, text) => {
    expect(parseRecord(text)).toEqual({ kind: 'read', rounds: [ROUND] });
  });

  test('is read as it was written, and nothing kept is no rounds', () => {
    expect(parseRecord(formatRecord([ROUND]))).toEqual({ kind: 'read', rounds: [ROUND] });
    expect(parseRecord(null)).toEqual({ kind: 'read', rounds: [] });
  });

  test('counts a round once', () => {
    const again = { ...ROUND, time: 10 } as const;
    expect(withRound([ROUND], again)).toEqual([ROUND]);
    expect(isCounted([ROUND], { ...ROUND })).toBe(true);
    expect(isCounted([ROUND], { ...ROUND, rules: 'ontario' })).toBe(false);
    expect(isCounted([ROUND], { ...ROUND, look: 'ties' })).toBe(false);
    expect(withRound([ROUND], { ...ROUND, round: 8 })).toHaveLength(2);
  });

  test.each([
    ['{', 'it is not in a form this page can read'],
    ['"x"', 'it is not a record of quick looks'],
    ['{"version":3,"rounds":[]}', 'it says version 3, and this page reads versions 1 to 2'],
    ['{"version":1}', 'rounds: missing'],
    [
      JSON.stringify({ version: 2, rounds: [{ ...ROUND, time: 15 }] }),
      'rounds.0: is not a round of 10 walls',
    ],
    [
      JSON.stringify({ version: 2, rounds: [ROUND, { ...ROUND, walls: ROUND.walls.slice(1) }] }),
      'rounds.1: is not a round of 10 walls',
    ],
  ])('that cannot be read says why: %s', (text, why) => {
    expect(parseRecord(text)).toEqual({ kind: 'unknown', why });
  });
});
