import { describe, expect, test } from 'vitest';
import { layByCode, layWithoutFaults } from '../../../lib/engines/engines';
import { bareWall } from '../../../lib/site-drawn/bare-wall';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { WALLS } from './walls';

const LAID = WALLS.map((brief) => {
  const sound = layWithoutFaults(brief);
  return { sound, bare: bareWall(layByCode(brief).wall, sound) };
});

describe('what a device is given of a wall that the site draws', () => {
  test('has the same parts with faults and without, each as large as without, but for the level of its course', () => {
    for (const { bare, sound } of LAID) {
      const given = surveyedWall(bare).parts;
      const without = surveyedWall(bareWall(sound, sound)).parts;
      expect([...given.keys()]).toEqual([...without.keys()]);
      for (const [id, part] of given) {
        if (part.kind === 'bed' || part.kind === 'panel') continue;
        expect([id, part.x, part.width, part.height]).toEqual([
          id,
          without.get(id)?.x,
          without.get(id)?.width,
          without.get(id)?.height,
        ]);
      }
    }
  });

  test('tells courses to 20 mm and places along the wall to 5 mm', () => {
    for (const { bare } of LAID) {
      const { units, gauge, family } = bare;
      for (const { x, y, course } of units) {
        expect(Math.abs(x % 5)).toBe(0);
        expect(Math.abs((y - (course * gauge - family.height)) % 20)).toBe(0);
      }
    }
  });

  test('every tie is like every other, every mixing too, and no joint is said to be filled less than another', () => {
    for (const { bare } of LAID) {
      const { ties, batches, heads, flashings, projections, units } = bare;
      const kinds = (list: readonly object[], ...own: readonly string[]) =>
        new Set(
          list.map((each) => JSON.stringify({ ...each, ...Object.fromEntries(own.map((key) => [key, 0])) })),
        );
      expect(kinds(ties, 'id', 'panel', 'course', 'x', 'y').size).toBeLessThanOrEqual(1);
      expect(kinds(batches, 'id', 'fromCourse', 'toCourse').size).toBeLessThanOrEqual(1);
      expect([heads, flashings, projections]).toEqual([[], [], []]);
      expect(
        new Set(
          units.map(({ condition, set, twist, lean, fall, back }) =>
            JSON.stringify([condition, set, twist, lean, fall, back]),
          ),
        ),
      ).toEqual(new Set([JSON.stringify(['sound', 0, 0, 0, 0, undefined])]));
    }
  });
});
