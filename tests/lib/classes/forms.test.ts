import { describe, expect, test } from 'vitest';
import { matchOf } from '../../../lib/classes/form-match';
import { briefAt, formFor, orderFor, slotsOf, type WallProbe } from '../../../lib/classes/forms';
import { minutesFor, type SetWorkSpec } from '../../../lib/classes/set-work';
import { TEMPLATES } from '../../../lib/classes/templates';
import { WALL_PROBE } from '../../../lib/exercise/wall-probe';
import { codeOf } from '../../../lib/generate/wall-code';

const SPEC: SetWorkSpec = {
  topics: ['joints'],
  kinds: ['plain-panel'],
  walls: 6,
  difficulty: 2,
  rules: 'canada',
  sameForAll: false,
  openingsUp: null,
  minutes: null,
  lessons: [],
  questionTopics: [],
  attempts: 1,
  passMark: null,
};

/** Walls by hand: the last digit of the seed tells what a wall holds. 9 plans two faults of which one finds no room. */
const BY_DIGIT: WallProbe = {
  planned: ({ seed }) =>
    [[], [], [], [], ['joints'], ['joints'], ['line'], ['line'], ['ties'], ['joints', 'line']][seed % 10] ??
    [],
  measured: ({ seed }) =>
    [[], [], [], [], ['joints'], ['joints'], ['line'], ['line'], ['ties'], ['joints']][seed % 10] ?? [],
};

const form = (learner: string | null, spec = SPEC, attempt = 1) =>
  formFor(spec, slotsOf(spec, 'secret', BY_DIGIT), 'secret', { learner, attempt }, BY_DIGIT);

const seen = (name: string, learner: string) => ({
  name,
  walls: form(learner).map((brief) => ({ difficulty: brief.difficulty, families: BY_DIGIT.measured(brief) })),
});

describe('forms from a secret', () => {
  test('the same secret gives the same form, another learner or attempt other walls', () => {
    expect(form('a')).toEqual(form('a'));
    const seeds = (learner: string, attempt: number) => form(learner, SPEC, attempt).map(({ seed }) => seed);
    const all = [...seeds('a', 1), ...seeds('b', 1), ...seeds('a', 2)];
    expect(new Set(all).size).toBe(18);
  });

  test('one wall for all is the same for every learner, in the order of the slots', () => {
    const spec = { ...SPEC, sameForAll: true };
    expect(form('a', spec)).toEqual(form('b', spec));
    expect(form('a', spec)).toEqual(form(null, spec));
    expect(orderFor(spec, 'secret', { learner: 'a', attempt: 1 })).toEqual([0, 1, 2, 3, 4, 5]);
    expect(form('a', spec).map(BY_DIGIT.measured)).toEqual(
      slotsOf(spec, 'secret', BY_DIGIT).map(({ families }) => families),
    );
  });

  test('forms hold the same kinds of fault the same number of times', () => {
    const match = matchOf([seen('A', 'a'), seen('B', 'b'), seen('C', 'c')]);
    expect(match.alike).toBe(true);
    expect(match.rows[0]?.difficulty).toBe(12);
  });

  test('neighbours do not have their sound walls in the same places', () => {
    const places = ['a', 'b', 'c', 'd', 'e', 'f'].map((learner) =>
      orderFor(SPEC, 'secret', { learner, attempt: 1 }).join(),
    );
    expect(new Set(places).size).toBeGreaterThan(3);
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
  ])('of %i walls, from %i to %i are sound', (walls, least, most) => {
    const spec = { ...SPEC, walls };
    const counts = Array.from(
      { length: 40 },
      (_, n) => slotsOf(spec, `secret ${n}`, BY_DIGIT).filter(({ families }) => families.length === 0).length,
    );
    expect(Math.min(...counts)).toBe(least);
    expect(Math.max(...counts)).toBe(most);
  });

  test('topics and kinds take turns', () => {
    const spec: SetWorkSpec = {
      ...SPEC,
      topics: ['joints', 'line'],
      kinds: ['plain-panel', 'gable-end', 'window-panel'],
    };
    const slots = slotsOf(spec, 'secret', BY_DIGIT);
    expect(slots.map(({ topic }) => topic).sort()).toEqual([
      'joints',
      'joints',
      'joints',
      'line',
      'line',
      'line',
    ]);
    expect(new Set(slots.map(({ kind }) => kind)).size).toBe(3);
  });

  test('a topic that can have no fault says so', () => {
    const sound: WallProbe = { planned: () => [], measured: () => [] };
    expect(() => slotsOf(SPEC, 'secret', sound)).toThrow(
      'no wall of the topic "joints" and the kind "plain-panel" can have a fault under these rules: choose another topic or kind',
    );
  });

  test('one wall by its place is the wall of the form; a place beyond it is refused', () => {
    const slots = slotsOf(SPEC, 'secret', BY_DIGIT);
    const owner = { learner: 'a', attempt: 1 };
    const one = (place: number) => briefAt(SPEC, slots, 'secret', owner, place, BY_DIGIT);
    expect([1, 2, 3, 4, 5, 6].map(one)).toEqual(form('a'));
    expect(() => one(7)).toThrow('none at 7');
  });

  test('a wall that is never found says so, and does not look for ever', () => {
    const slots = slotsOf(SPEC, 'secret', BY_DIGIT);
    const sound: WallProbe = { planned: () => [], measured: () => [] };
    expect(() => formFor(SPEC, slots, 'secret', { learner: 'a', attempt: 1 }, sound)).toThrow('was found');
  });

  test('real walls: four learners of the fair test are matched, and no code comes twice', () => {
    const { spec } = TEMPLATES.find(({ id }) => id === 'fair-test') as (typeof TEMPLATES)[number];
    const slots = slotsOf(spec, 'real', WALL_PROBE);
    const forms = ['a', 'b', 'c', 'd'].map((learner) => ({
      name: learner,
      briefs: formFor(spec, slots, 'real', { learner, attempt: 1 }, WALL_PROBE),
    }));
    const match = matchOf(
      forms.map(({ name, briefs }) => ({
        name,
        walls: briefs.map((brief) => ({
          difficulty: brief.difficulty,
          families: WALL_PROBE.measured(brief),
        })),
      })),
    );
    expect(match.rows.map(({ alike }) => alike)).toEqual([true, true, true, true]);
    expect(new Set(forms.flatMap(({ briefs }) => briefs.map(codeOf))).size).toBe(48);
  });
});

describe('the match of forms', () => {
  const wall = (difficulty: number, ...families: readonly string[]) => ({ difficulty, families });

  test('counts by hand', () => {
    const match = matchOf([
      { name: 'A', walls: [wall(2), wall(2, 'line', 'joints'), wall(2, 'joints')] },
      { name: 'B', walls: [wall(2, 'joints', 'line'), wall(2, 'joints'), wall(2)] },
    ]);
    expect(match).toEqual({
      families: ['joints', 'line'],
      rows: [
        { name: 'A', walls: 3, difficulty: 6, sound: 1, faults: 3, byFamily: [2, 1], alike: true },
        { name: 'B', walls: 3, difficulty: 6, sound: 1, faults: 3, byFamily: [2, 1], alike: true },
      ],
      alike: true,
    });
  });

  test.each([
    ['one more sound wall', [wall(2), wall(2), wall(2, 'joints', 'joints', 'line')]],
    ['another family', [wall(2), wall(2, 'line', 'joints'), wall(2, 'line')]],
    ['a harder wall', [wall(2), wall(3, 'line', 'joints'), wall(2, 'joints')]],
    ['a wall fewer', [wall(2), wall(4, 'line', 'joints', 'joints')]],
  ])('%s is seen', (_, walls) => {
    const first = { name: 'A', walls: [wall(2), wall(2, 'line', 'joints'), wall(2, 'joints')] };
    const match = matchOf([first, { name: 'B', walls }]);
    expect(match.alike).toBe(false);
    expect(match.rows.map(({ alike }) => alike)).toEqual([true, false]);
  });

  test('no form at all is alike', () => {
    expect(matchOf([])).toEqual({ families: [], rows: [], alike: true });
  });
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
