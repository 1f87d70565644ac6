import { describe, expect, test } from 'vitest';
import { layByCode } from '../../lib/engines/engines';
import { FAULTS } from '../../lib/generate/faults';
import { parseCode } from '../../lib/generate/wall-code';
import { CHECKS } from '../../lib/inspect/finding';
import { frozenWalls } from '../frozen/frozen-walls';
import { badWork } from './bonded';
import { combinations, lawWall } from './law-walls';
import { brokenLaws } from './laws';

/** Each round lays every fault on every kind of wall it fits under every rule set; severities and seeds change with the round. A hundred thousand walls: npm run bench -- laws. */
const ROUNDS = 2;

describe('laws of the walls', () => {
  const all = combinations();

  test('every fault can be laid on some kind of wall', () => {
    expect(CHECKS.filter((check) => !all.some(({ fault }) => fault === check))).toEqual([]);
    expect(Object.keys(FAULTS)).toHaveLength(34);
  });

  test.each(Array.from({ length: ROUNDS }, (_, round) => round))(
    'round %i: a sound wall has no finding, a spoiled one exactly its fault; nothing is doubtful; mirror, print and seed agree',
    (round) => {
      const broken: string[] = [];
      for (let n = round * all.length; n < (round + 1) * all.length; n++)
        broken.push(...brokenLaws(lawWall(n)));
      expect(broken).toEqual([]);
    },
  );
});

/** What engine 2 laid and no mason would sign. */
const LAID_BY_ENGINE_2: readonly RegExp[] = [
  /^corner of course/,
  /straight joint from course/,
  /over it$/,
  /^A-door1 is .* high$/,
  /lies on the lintel$/,
];

test('an unbonded corner, a straight joint, little lap, a low door and a tie on a lintel are noticed', () => {
  const bad = frozenWalls(2).flatMap(({ code }) => badWork(layByCode(parseCode(code)).wall));
  expect(LAID_BY_ENGINE_2.filter((said) => !bad.some((each) => said.test(each)))).toEqual([]);
});
