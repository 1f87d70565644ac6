import { describe, expect, test } from 'vitest';
import { exerciseAddress, usualRules } from '../../../../lib/drills/today/exercise';
import { wallForStep } from '../../../../lib/drills/today/wall-for-step';
import { whyWords } from '../../../../lib/drills/today/why-words';
import { chanceOf } from '../../../../lib/generate/chance';
import { layWall } from '../../../../lib/generate/generate';
import { codeOf, parseCode } from '../../../../lib/generate/wall-code';
import { inspect } from '../../../../lib/inspect/inspect';
import type { WallStep } from '../../../../lib/learning/chooser';
import { FAMILIES, faultsOf } from '../../../../lib/learning/family';
import { standingOf } from '../../../../lib/learning/standing';
import { DAY, START, tieWall } from '../../learning/samples';

const step: WallStep = {
  ...{ kind: 'full wall', topic: 'ties', family: 'ties', reason: 'weak', difficulty: 3 },
  ...{ isSound: false, fault: null, hasSeveral: false },
};
const drawOf = (seed: number) => {
  const chance = chanceOf(seed, 0);
  return () => chance.whole(0, 999_999) / 1_000_000;
};
const measured = (asked: WallStep, seed: number) => {
  const brief = wallForStep(asked, 'canada', new Set(), drawOf(seed));
  return { brief, faults: inspect(layWall(brief), 'canada').map(({ check }) => check) };
};

describe('the wall of a step', () => {
  test.each(FAMILIES)(
    '%s: measures faulty or sound, as asked, of the topic and difficulty asked',
    (family) => {
      const asked = { ...step, topic: family, family };
      for (const isSound of [false, true]) {
        const { brief, faults } = measured({ ...asked, isSound }, 5);
        expect({ topic: brief.topic, difficulty: brief.difficulty, isSound: faults.length === 0 }).toEqual({
          topic: family,
          difficulty: 3,
          isSound,
        });
      }
    },
  );

  test.each(FAMILIES.flatMap((family) => faultsOf(family).map((fault) => ({ family, fault }))))(
    'has $fault where that is asked for',
    ({ family, fault }) => {
      expect(measured({ ...step, topic: family, family, fault }, 7).faults).toContain(fault);
    },
  );

  test('has two faults or more where several are asked for', () => {
    for (const seed of [1, 2, 3]) {
      expect(measured({ ...step, hasSeveral: true }, seed).faults.length).toBeGreaterThan(1);
    }
  });

  test('an easy one is a plain panel where its fault can be on one, and is not where it cannot', () => {
    expect(measured({ ...step, difficulty: 1 }, 1).brief.kind).toBe('plain-panel');
    const lintel = {
      ...step,
      topic: 'support',
      family: 'support',
      fault: 'no-lintel',
      difficulty: 1,
    } as const;
    expect(measured(lintel, 1).brief.kind).toMatch(/window-panel|door-corner/);
  });

  test('is not one that was read before', () => {
    const first = codeOf(wallForStep(step, 'canada', new Set(), drawOf(9)));
    expect(codeOf(wallForStep(step, 'canada', new Set([first]), drawOf(9)))).not.toBe(first);
  });
});

describe('the address of an exercise', () => {
  const addressOf = (kind: WallStep['kind']) =>
    exerciseAddress({ ...step, kind }, 'ontario', new Set(), drawOf(3));

  test.each([
    ['full wall', '/walls/'],
    ['pair', '/practise/pair/'],
    ['guided wall', '/practise/guided/'],
  ] as const)('%s', (kind, way) => {
    expect(addressOf(kind).slice(0, way.length)).toBe(way);
    expect(parseCode(addressOf(kind).slice(way.length))).toMatchObject({ topic: 'ties', rules: 'ontario' });
  });

  test('quick looks look where the family shows', () => {
    const look = { kind: 'quick look', family: 'ties', reason: 'due', difficulty: 3 } as const;
    expect(exerciseAddress(look, 'canada', new Set(), () => 0.5)).toBe(
      '/practise/quick?rules=canada&round=500000&look=ties&level=3',
    );
  });

  test('goes by the rules of the last wall, and by those of Canada before there was one', () => {
    const brief = {
      topic: 'ties',
      kind: 'plain-panel',
      difficulty: 1,
      rules: 'united-kingdom',
      seed: 4,
    } as const;
    expect(usualRules([{ ...tieWall(1, 0, 'found'), wall: codeOf(brief) }])).toBe('united-kingdom');
    expect(usualRules([tieWall(1, 0, 'found')])).toBe('canada');
    expect(usualRules([])).toBe('canada');
  });
});

test('what is due says how long ago it was read', () => {
  const standing = standingOf([tieWall(1, 0, 'found')]);
  expect(whyWords({ ...step, reason: 'due' }, standing, START + 4 * DAY)).toBe(
    'Ties: the last wall was 4 days ago, so it is time to look again.',
  );
});
