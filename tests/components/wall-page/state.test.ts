import { describe, expect, test } from 'vitest';
import { formatWork, parseWork } from '../../../components/wall-page/kept-work';
import {
  FRESH,
  type HalfMade,
  type Mark,
  type Work,
  type WorkAction,
  type WorkState,
  workReducer,
} from '../../../components/wall-page/work-state';
import type { Reading } from '../../../lib/instruments/reading';

const TWIST: Mark = { part: 'A3.2', fault: 'twisted-unit', sure: 3 };
const THICK: Mark = { part: 'A3.2-bed', fault: 'thick-joint', sure: 1 };

/** A mark half made: invented, for the tests. */
const HALF: HalfMade = {
  part: 'A3.2',
  changing: null,
  words: 'twi',
  fault: 'twisted-unit',
  place: null,
  sure: 1,
  details: { reading: '6.5', kind: 'good practice', act: null },
  system: 'mm',
};

/** The same as a browser holds it. */
const { details: said, ...rest } = HALF;
const KEPT_HALF = { ...rest, said };

function stateAfter(...actions: readonly WorkAction[]): WorkState {
  return actions.reduce(workReducer, FRESH);
}

describe('marks', () => {
  test('are numbered in the order they are made, changed in place, and close up when one is removed', () => {
    const two = stateAfter({ kind: 'mark', mark: TWIST }, { kind: 'mark', mark: THICK });
    expect(two.marks).toEqual([TWIST, THICK]);
    const changed = workReducer(two, { kind: 'change', index: 0, mark: { ...TWIST, sure: 1 } });
    expect(changed.marks).toEqual([{ part: 'A3.2', fault: 'twisted-unit', sure: 1 }, THICK]);
    expect(workReducer(two, { kind: 'remove', index: 0 }).marks).toEqual([THICK]);
  });

  test('are undone step by step, removals too', () => {
    const removed = stateAfter({ kind: 'mark', mark: TWIST }, { kind: 'remove', index: 0 });
    const once = workReducer(removed, { kind: 'undo' });
    expect(once.marks).toEqual([TWIST]);
    expect(workReducer(once, { kind: 'undo' })).toEqual(FRESH);
    expect(workReducer(FRESH, { kind: 'undo' })).toEqual(FRESH);
  });
});

describe('a mark half made', () => {
  const half = { kind: 'fill in', half: HALF } as const;
  const change = { kind: 'fill in', half: { ...HALF, changing: 0 } } as const;
  const mark = { kind: 'mark', mark: TWIST } as const;

  test.each<[string, readonly WorkAction[], HalfMade | null]>([
    ['stays while the reader looks and measures', [half, { kind: 'note', reading: READING }], HALF],
    ['stays when another mark is removed', [mark, half, { kind: 'remove', index: 0 }], HALF],
    ['is done with when the mark is made', [half, mark], null],
    [
      'is done with when the mark is changed',
      [mark, change, { kind: 'change', index: 0, mark: THICK }],
      null,
    ],
    ['goes with the mark it would change', [mark, change, { kind: 'remove', index: 0 }], null],
    ['goes when the marks are those of before', [mark, change, { kind: 'undo' }], null],
    ['is put away', [half, { kind: 'fill in', half: null }], null],
    ['is not handed in', [mark, half, { kind: 'look once more' }, { kind: 'hand in' }], null],
    ['is not there after a fresh start', [half, { kind: 'start again' }], null],
  ])('%s', (_, actions, left) => {
    expect(stateAfter(...actions).half).toEqual(left);
  });
});

describe('handing in', () => {
  test('needs the review, and an answer', () => {
    expect(stateAfter({ kind: 'mark', mark: TWIST }, { kind: 'hand in' }).phase).toBe('looking');
    expect(stateAfter({ kind: 'look once more' }, { kind: 'hand in' }).phase).toBe('review');
    expect(stateAfter({ kind: 'say sound' }, { kind: 'hand in' }).phase).toBe('handed in');
  });

  test('is for good, until the wall is laid again', () => {
    const done = stateAfter({ kind: 'mark', mark: TWIST }, { kind: 'look once more' }, { kind: 'hand in' });
    expect(workReducer(done, { kind: 'mark', mark: THICK })).toEqual(done);
    expect(workReducer(done, { kind: 'undo' })).toEqual(done);
    expect(workReducer(done, { kind: 'back to the wall' })).toEqual(done);
    expect(workReducer(done, { kind: 'start again' })).toEqual(FRESH);
  });

  test('“sound” and marks do not go together', () => {
    expect(stateAfter({ kind: 'mark', mark: TWIST }, { kind: 'say sound' }).saysSound).toBe(false);
    expect(
      stateAfter({ kind: 'say sound' }, { kind: 'back to the wall' }, { kind: 'mark', mark: TWIST })
        .saysSound,
    ).toBe(false);
  });
});

const READING: Reading = {
  instrument: 'tape',
  part: 'A3.2',
  what: 'Length',
  value: 190.5,
  unit: 'mm',
  words: null,
  error: 1,
  fine: false,
  turned: false,
};

describe('openings-up', () => {
  const lift = (unit: string): WorkAction => ({ kind: 'open up', unit, most: 2 });

  test('are spent one a unit, never twice on the same, and not beyond the number allowed', () => {
    const state = stateAfter(lift('A3.1'), lift('A3.1'), lift('A5.1'), lift('A7.1'));
    expect(state.opened).toEqual(['A3.1', 'A5.1']);
  });

  test('are not given back by undo, but by laying the wall again', () => {
    const state = stateAfter(lift('A3.1'), { kind: 'undo' });
    expect(state.opened).toEqual(['A3.1']);
    expect(workReducer(state, { kind: 'start again' }).opened).toEqual([]);
  });
});

test('readings go into the notebook in order, and can be taken out', () => {
  const other = { ...READING, part: 'A4.1' };
  const noted = stateAfter({ kind: 'note', reading: READING }, { kind: 'note', reading: other });
  expect(noted.readings).toEqual([READING, other]);
  expect(workReducer(noted, { kind: 'forget', index: 0 }).readings).toEqual([other]);
});

describe('kept work', () => {
  const isPart = (id: string) => id.startsWith('A3');
  const work: Work = {
    marks: [{ ...TWIST, reading: 6.5, kind: 'good practice', act: 'put right now' }, THICK],
    saysSound: false,
    phase: 'review',
    opened: ['A3.1', 'A3.7'],
    readings: [READING],
    half: { ...HALF, changing: 0 },
  };

  test('comes back as it was', () => {
    expect(parseWork(formatWork(work), isPart)).toEqual(work);
  });

  test('of version 1, without openings-up and notebook, is still read', () => {
    const old =
      '{"version":1,"marks":[{"part":"A3.2","fault":"twisted-unit","sure":3}],"saysSound":false,"phase":"looking"}';
    expect(parseWork(old, isPart)).toEqual({
      marks: [TWIST],
      saysSound: false,
      phase: 'looking',
      opened: [],
      readings: [],
      half: null,
    });
  });

  test('of version 2, without a mark half made, is still read', () => {
    const { half, ...before } = work;
    expect(parseWork(JSON.stringify({ version: 2, ...before }), isPart)).toEqual({ ...work, half: null });
  });

  test('with a mark half made is read as browsers have held it since version 3', () => {
    const old =
      '{"version":3,"marks":[],"saysSound":false,"phase":"looking","opened":[],"readings":[],"half":{"part":"A3.2","changing":null,"words":"twi","fault":"twisted-unit","place":null,"sure":1,"said":{"reading":"6.5","kind":"good practice","act":null},"system":"mm"}}';
    expect(parseWork(old, isPart)?.half).toEqual(HALF);
    expect(JSON.parse(formatWork({ ...FRESH, half: HALF }))).toEqual(JSON.parse(old));
  });

  test.each([
    ['on a part of another wall', { part: 'B1.1' }],
    ['that changes a mark that is not there', { changing: 2 }],
    ['that changes a mark elsewhere', { changing: 1 }],
    ['of an unknown fault', { fault: 'ghost' }],
    ['that goes on a part of another wall', { place: 'B1.1' }],
    ['of an unknown certainty', { sure: 4 }],
    ['with an act nobody knows', { said: { ...said, act: 'run' } }],
    ['with a reading that is no text', { said: { ...said, reading: 6.5 } }],
    ['in unknown lengths', { system: 'cubits' }],
    ['without the words typed', { words: undefined }],
  ])('is refused with a mark half made %s', (_, changes) => {
    const text = JSON.stringify({ version: 3, ...work, half: { ...KEPT_HALF, ...changes } });
    expect(parseWork(text, isPart)).toBeNull();
  });

  test.each([
    ['nothing', null],
    ['no JSON', '{'],
    ['another version', '{"version":4,"marks":[],"saysSound":false,"phase":"looking"}'],
    ['an opening-up elsewhere', '{"version":2,"marks":[],"opened":["B1.1"],"phase":"looking"}'],
    ['a reading that is none', '{"version":2,"marks":[],"readings":[{"part":"A3.1"}],"phase":"looking"}'],
    [
      'an act nobody knows',
      '{"version":2,"marks":[{"part":"A3.1","fault":"thin-tie","sure":1,"act":"run"}],"phase":"looking"}',
    ],
    [
      'a reading in words',
      '{"version":2,"marks":[{"part":"A3.1","fault":"thin-tie","sure":1,"reading":"big"}],"phase":"looking"}',
    ],
    ['an unknown phase', '{"version":1,"marks":[],"saysSound":false,"phase":"done"}'],
    [
      'a part of another wall',
      '{"version":1,"marks":[{"part":"B1.1","fault":"thin-tie","sure":1}],"phase":"looking"}',
    ],
    [
      'an unknown fault',
      '{"version":1,"marks":[{"part":"A3.1","fault":"ghost","sure":1}],"phase":"looking"}',
    ],
    [
      'an unknown certainty',
      '{"version":1,"marks":[{"part":"A3.1","fault":"thin-tie","sure":4}],"phase":"looking"}',
    ],
  ])('is refused when it is %s', (_, text) => {
    expect(parseWork(text, isPart)).toBeNull();
  });
});
