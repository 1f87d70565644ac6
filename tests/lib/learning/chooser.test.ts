import { describe, expect, test } from 'vitest';
import { type Chance, chanceOf } from '../../../lib/generate/chance';
import type { Attempt } from '../../../lib/learning/attempt';
import { nextStep, type Step } from '../../../lib/learning/chooser';
import { FAMILIES, faultsOf } from '../../../lib/learning/family';
import { mergedRecords } from '../../../lib/learning/record';
import { standingOf } from '../../../lib/learning/standing';
import { courseOf } from '../../bench/learners/course';
import { DAY, fault, START, tieWall } from './samples';

const drawOf = (chance: Chance) => () => chance.whole(0, 999) / 1000;
const next = (record: readonly Attempt[], now: number, seed = 1): Step =>
  nextStep(record, standingOf(record), now, drawOf(chanceOf(seed, 0)));

/** A learner who gets everything right, or everything wrong, eight walls a day. */
function steps(count: number, isRight: boolean, seed: number): readonly Step[] {
  const draw = drawOf(chanceOf(seed, 1));
  const record: Attempt[] = [];
  return Array.from({ length: count }, (_, number) => {
    const at = START + Math.floor(number / 8) * DAY + number * 1000;
    const step = nextStep(record, standingOf(record), at, draw);
    const done = { version: 1, id: `${number}`, at, zone: 0, spentMs: null } as const;
    if (step.kind === 'quick look') {
      record.push({
        ...done,
        kind: 'quick look',
        rules: 'canada',
        round: number,
        look: 'face',
        level: 1,
        time: null,
        walls: [],
      });
    } else {
      const { kind, topic, difficulty, isSound, family } = step;
      const faults = isSound
        ? []
        : [fault(step.fault ?? faultsOf(family)[0] ?? 'thin-tie', isRight ? 'found' : 'missed')];
      record.push({
        ...done,
        kind,
        wall: `w${number}`,
        topic,
        difficulty,
        marks: [],
        faults,
        falseCalls: [],
      });
    }
    return step;
  });
}

const walls = (all: readonly Step[]) => all.flatMap((step) => (step.kind === 'quick look' ? [] : [step]));

describe('what comes next', () => {
  test('a new family is met by a guided wall, a pair and a wall alone, in that order', () => {
    expect(steps(6, true, 3).map(({ kind, family }) => [family, kind])).toEqual([
      ['back-mortar', 'guided wall'],
      ['back-mortar', 'pair'],
      ['back-mortar', 'full wall'],
      ['joints', 'guided wall'],
      ['joints', 'pair'],
      ['joints', 'full wall'],
    ]);
  });

  test.each([true, false])(
    'after its introduction no family comes twice running (all right: %s)',
    (isRight) => {
      const all = walls(steps(160, isRight, 5));
      const running = all.filter(
        (step, index) => step.family === all[index - 1]?.family && step.reason !== 'new',
      );
      expect(running).toEqual([]);
    },
  );

  test.each([true, false])('every family is met within sixty walls (all right: %s)', (isRight) => {
    const met = new Set(walls(steps(60, isRight, 7)).map(({ family }) => family));
    expect([...met].sort()).toEqual([...FAMILIES].sort());
  });

  test('about two full walls in five are sound, and nothing in why they were chosen tells which', () => {
    const full = [1, 2, 3].flatMap((seed) =>
      walls(steps(200, true, seed)).filter(({ kind }) => kind === 'full wall'),
    );
    const sound = full.filter(({ isSound }) => isSound);
    expect(sound.length / full.length).toBeGreaterThan(0.33);
    expect(sound.length / full.length).toBeLessThan(0.47);
    for (const reason of ['due', 'weak', 'proof'] as const) {
      const of = full.filter((step) => step.reason === reason).map(({ isSound }) => isSound);
      expect([of.includes(true), of.includes(false)]).toEqual([of.length > 5, of.length > 5]);
    }
  });

  test('walls stay easy for who misses everything, and grow hard for who misses nothing', () => {
    expect(new Set(walls(steps(120, false, 9)).map(({ difficulty }) => difficulty))).toEqual(new Set([1]));
    expect(walls(steps(400, true, 9)).at(-1)?.difficulty).toBe(5);
  });

  test('three full walls in a row are followed by quick looks', () => {
    const all = steps(80, true, 11);
    const fourth = all.filter(
      (_, index) => index > 2 && all.slice(index - 3, index).every(({ kind }) => kind === 'full wall'),
    );
    expect(new Set(fourth.map(({ kind }) => kind))).toEqual(new Set(['quick look']));
  });

  const MET = FAMILIES.flatMap((topic, index) =>
    (['guided wall', 'pair', 'full wall'] as const).map(
      (kind, step): Attempt => ({
        ...tieWall(index * 3 + step, 0, 'found'),
        ...{ kind, topic, faults: [fault(faultsOf(topic)[0] ?? 'thin-tie', 'found')] },
      }),
    ),
  );
  test('a family that is due goes before one that is not', () => {
    const later = MET.map((attempt): Attempt => {
      const isTies = 'topic' in attempt && attempt.topic === 'ties';
      return isTies ? attempt : { ...attempt, at: attempt.at + 2 * DAY };
    });
    expect(next(mergedRecords(later, []), START + 4 * DAY)).toMatchObject({ family: 'ties', reason: 'due' });
  });

  test('who stops after the first fault gets walls with several', () => {
    const several = Array.from(
      { length: 5 },
      (_, number): Attempt => ({
        ...tieWall(100 + number, 1, 'found'),
        faults: [fault('shallow-tie', 'found'), fault('thin-tie', 'missed')],
      }),
    );
    const alone = Array.from(
      { length: 5 },
      (_, number): Attempt => ({
        ...tieWall(200 + number, 2, 'found'),
        kind: 'set work',
      }),
    );
    const asked = (record: readonly Attempt[]) =>
      Array.from({ length: 20 }, (_, seed) => next([...MET, ...record], START + 30 * DAY, seed)).some(
        (step) => step.kind === 'full wall' && step.hasSeveral,
      );
    expect([asked([...several, ...alone]), asked(alone)]).toEqual([true, false]);
  });
});

// The whole bench prints ratios; here one seed each shows that the chooser does not stray.
test.each(['graded', 'all or none', 'forgetting', 'prone to false calls', 'guessing'] as const)(
  'a learner who is %s meets every family within sixty walls and is told of no mastery that is not there',
  (kind) => {
    const { wallsToMeetAll, said, saidWrongly } = courseOf(kind, 'chooser', 2);
    expect(wallsToMeetAll).toBeLessThanOrEqual(60);
    expect(saidWrongly).toBeLessThanOrEqual(said * 0.05);
  },
);
