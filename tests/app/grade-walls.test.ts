import { describe, expect, test } from 'vitest';
import { gradeWalls } from '../../app/server/grade-walls';
import { parseBrief } from '../../lib/generate/brief';
import { layWall } from '../../lib/generate/generate';
import { codeOf } from '../../lib/generate/wall-code';
import { inspect } from '../../lib/inspect/inspect';
import { fingerprintOf } from '../../lib/wall/print';

const UNTOUCHED = { place: 1, marks: [], readings: [], saysSound: false, opened: [], spentMs: 0 };

/** A wall as it comes in, with nothing done to it: the first of these briefs with that many faults. */
function untouched(faults: number) {
  for (let seed = 0; seed < 200; seed++) {
    const brief = parseBrief({ topic: 'mixed', kind: 'plain-panel', difficulty: 2, rules: 'canada', seed });
    const wall = layWall(brief);
    if (inspect(wall, 'canada').length === faults) {
      return { ...UNTOUCHED, code: codeOf(brief), fingerprint: fingerprintOf(wall) };
    }
  }
  throw new Error(`no wall with ${faults} faults`);
}

const sound = untouched(0);
const faulty = untouched(1);
const scoresOf = (walls: Parameters<typeof gradeWalls>[0]) =>
  gradeWalls(walls)?.results.map(({ score, answered }) => [score, answered]);

describe('a wall that nobody answered', () => {
  test('scores nothing, sound or not; said to be sound, or marked, it is answered', () => {
    expect(scoresOf([sound, faulty])).toEqual([
      [0, false],
      [0, false],
    ]);
    expect(scoresOf([{ ...sound, saysSound: true }])).toEqual([[1, true]]);
    expect(scoresOf([{ ...sound, marks: [{ part: 'A2.2', fault: 'proud-unit' as const }] }])).toEqual([
      [0.5, true],
    ]);
    expect(scoresOf([{ ...faulty, saysSound: true }])).toEqual([[0, true]]);
  });

  test('a lifted unit and a reading are no answer yet', () => {
    const looked = { ...sound, opened: ['A2.2'], readings: [{ tool: 'tape' }], spentMs: 60_000 };
    expect(scoresOf([looked])).toEqual([[0, false]]);
  });

  test('a set work handed in at once, two of six walls sound, scores nothing', () => {
    const walls = [sound, sound, faulty, faulty, faulty, faulty];
    expect(gradeWalls(walls)?.score).toBe(0);
  });
});
