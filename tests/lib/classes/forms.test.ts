import { describe, expect, test } from 'vitest';
import { matchOf } from '../../../lib/classes/form-match';
import { briefAt, formFor, usualSeverity, type WallProbe } from '../../../lib/classes/forms';
import { minutesFor, type SetWorkSpec } from '../../../lib/classes/set-work';
import { TEMPLATES } from '../../../lib/classes/templates';
import { severityOf, WALL_PROBE } from '../../../lib/exercise/wall-probe';
import type { Brief } from '../../../lib/generate/brief';
import { codeOf } from '../../../lib/generate/wall-code';

const SPEC: SetWorkSpec = {
  topics: ['joints'],
  kinds: ['plain-panel'],
  walls: 6,
  difficulty: 2,
  rules: 'canada',
  sameForAll: false,
  offline: true,
  openingsUp: null,
  minutes: null,
  lessons: [],
  questionTopics: [],
  attempts: 1,
  passMark: null,
};

/** Walls by hand: the last digit of the seed tells what a wall holds. 9 plans a fault that finds no room. */
const BY_DIGIT: WallProbe = {
  planned: ({ seed }) => [0, 0, 0, 0, 1, 1, 1, 2, 2, 1][seed % 10] ?? 0,
  measured: ({ seed }) => [[], [], [], [], [0.1], [0.5], [0.9], [0.4, 0.6], [1, 1], []][seed % 10] ?? [],
};

const form = (
  learner: string | null,
  spec: SetWorkSpec & { readonly severity?: number } = SPEC,
  attempt = 1,
) => formFor(spec, 'secret', { learner, attempt }, BY_DIGIT);

const isSound = (brief: Brief) => BY_DIGIT.measured(brief).length === 0;

describe('forms from a secret', () => {
  test('the same secret gives the same form, another learner or attempt other walls', () => {
    expect(form('a')).toEqual(form('a'));
    const seeds = (learner: string, attempt: number) => form(learner, SPEC, attempt).map(({ seed }) => seed);
    const all = [...seeds('a', 1), ...seeds('b', 1), ...seeds('a', 2)];
    expect(new Set(all).size).toBe(18);
  });

  test('one wall for all is the same for every learner', () => {
    const spec = { ...SPEC, sameForAll: true };
    expect(form('a', spec)).toEqual(form('b', spec));
    expect(form('a', spec)).toEqual(form(null, spec));
  });

  test('no wall holds a fault that was only planned', () => {
    const digits = Array.from({ length: 20 }, (_, n) =>
      form(`learner ${n}`).map(({ seed }) => seed % 10),
    ).flat();
    expect(digits).not.toContain(9);
  });

  test.each([
    // From three tenths, rounded down, to half, rounded up; worked out by hand.
    [1, 0, 1],
    [2, 0, 1],
    [3, 1, 2],
    [4, 1, 2],
    [6, 1, 3],
    [10, 3, 5],
    [12, 3, 6],
  ])(
    'of %i walls, from %i to %i are sound, and each learner has a number of their own',
    (walls, least, most) => {
      const counts = Array.from(
        { length: 60 },
        (_, n) => form(`learner ${n}`, { ...SPEC, walls }).filter(isSound).length,
      );
      expect(Math.min(...counts)).toBe(least);
      expect(Math.max(...counts)).toBe(most);
    },
  );

  test('topics and kinds come up equally often in every form', () => {
    const spec: SetWorkSpec = {
      ...SPEC,
      topics: ['joints', 'line'],
      kinds: ['plain-panel', 'gable-end', 'window-panel'],
    };
    for (const learner of ['a', 'b', 'c']) {
      const counts = (of: 'topic' | 'kind') =>
        spec[`${of}s`].map((each) => form(learner, spec).filter((brief) => brief[of] === each).length);
      expect(counts('topic')).toEqual([3, 3]);
      expect(counts('kind')).toEqual([2, 2, 2]);
    }
  });

  test('the kind of a wall tells nothing of what is in it: each kind is sound for some and faulty for others', () => {
    const spec: SetWorkSpec = { ...SPEC, kinds: ['plain-panel', 'gable-end'], walls: 4 };
    const forms = Array.from({ length: 40 }, (_, n) => form(`learner ${n}`, spec)).flat();
    for (const kind of spec.kinds) {
      const sound = forms.filter((brief) => brief.kind === kind).map(isSound);
      expect(new Set(sound)).toEqual(new Set([true, false]));
    }
  });

  test('of three faulty walls drawn, the one nearest the usual severity is set', () => {
    // All faults are 0.1, 0.5, 0.9 or 1 over: drawn alike often, nearest to 0.5 are those of 0.5 in the mean.
    const meanOf = (spec: SetWorkSpec & { readonly severity?: number }) => {
      const faults = Array.from({ length: 60 }, (_, n) => form(`learner ${n}`, spec))
        .flat()
        .flatMap(BY_DIGIT.measured);
      return faults.filter((each) => each >= 0.4 && each <= 0.6).length / faults.length;
    };
    // Of the digits 4 to 8, two of five hold such faults; of three drawn, 1 − (3/5)³ = 78 % have one.
    expect(meanOf(SPEC)).toBeLessThan(0.6);
    expect(meanOf({ ...SPEC, severity: 0.5 })).toBeGreaterThan(0.7);
  });

  test('usual severity by hand: the first two faulty walls of each topic and kind', () => {
    // Seeds 4 and 5: 0.1 and 0.5.
    expect(usualSeverity(SPEC, BY_DIGIT)).toBeCloseTo(0.3, 12);
    expect(usualSeverity({ ...SPEC, kinds: ['plain-panel', 'gable-end'] }, BY_DIGIT)).toBeCloseTo(0.3, 12);
  });

  test('a topic that can have no fault says so, and does not look for ever', () => {
    const sound: WallProbe = { planned: () => 0, measured: () => [] };
    const problem =
      'no wall of the topic "joints" and the kind "plain-panel" can have a fault under these rules: choose another topic or kind';
    expect(() => usualSeverity(SPEC, sound)).toThrow(problem);
    expect(() => formFor(SPEC, 'secret', { learner: 'a', attempt: 1 }, sound)).toThrow(problem);
  });

  test('one wall by its place is the wall of the form; a place beyond it is refused', () => {
    const one = (place: number) => briefAt(SPEC, 'secret', { learner: 'a', attempt: 1 }, place, BY_DIGIT);
    expect([1, 2, 3, 4, 5, 6].map(one)).toEqual(form('a'));
    expect(() => one(7)).toThrow('none at 7');
  });

  test('real walls: what a form is drawn to hold is what its walls are found to hold, and no code comes twice', () => {
    const { spec } = TEMPLATES.find(({ id }) => id === 'fair-test') as (typeof TEMPLATES)[number];
    const forms = ['a', 'b', 'c'].map((learner) =>
      formFor(spec, 'real', { learner, attempt: 1 }, WALL_PROBE),
    );
    expect(new Set(forms.flat().map(codeOf)).size).toBe(36);
    for (const briefs of forms) {
      const sound = briefs.filter((brief) => WALL_PROBE.measured(brief).length === 0).length;
      expect(sound).toBeGreaterThanOrEqual(3);
      expect(sound).toBeLessThanOrEqual(6);
    }
  });
});

test('how far a fault is over its limit: a share of the limit, at most all of it', () => {
  expect(severityOf({ margin: -3, limit: 12, unit: 'mm' })).toBe(0.25);
  expect(severityOf({ margin: -30, limit: 12, unit: 'mm' })).toBe(1);
  expect(severityOf({ margin: -1, limit: 1, unit: 'there or not' })).toBe(1);
  expect(severityOf({ margin: -4, limit: 0, unit: 'mm' })).toBe(1);
});

test('the match of forms counts by hand', () => {
  expect(
    matchOf([
      { name: 'A', walls: [[], [0.2, 0.4], [0.6]] },
      { name: 'B', walls: [[]] },
    ]),
  ).toEqual([
    { name: 'A', walls: 3, sound: 1, faults: 3, severity: expect.closeTo(0.4, 12) },
    { name: 'B', walls: 1, sound: 1, faults: 0, severity: null },
  ]);
  expect(matchOf([])).toEqual([]);
});

test.each([
  [null, 150, null],
  [40, 100, 40],
  [40, 150, 60],
  [25, 125, 32],
])('%s minutes at %i percent are %s', (minutes, factor, expected) => {
  // 25 · 1.25 = 31.25, rounded up in the learner's favour.
  expect(minutesFor({ minutes }, factor)).toBe(expected);
});
