import { describe, expect, test } from 'vitest';
import { findJoints, nominal } from '../../../lib/photo/find';
import { verdictOf } from '../../../lib/photo/judge';
import { mapped } from '../../../lib/photo/matrix';
import { measurePhotograph } from '../../../lib/photo/measure';
import type { QuantityName } from '../../../lib/photo/quantities';
import { lineThrough } from '../../../lib/photo/rows';
import { brickPicture, brickReference, TO_TEXTURE } from './brick-photograph';

const picture = brickPicture();
/** The largest rectangle that the picture shows whole, nearly. */
const SHOWN = [20, 290, 1150, 1660] as const;
const measured = measurePhotograph(picture, brickReference(SHOWN), { rules: 'canada' });

function of(name: QuantityName) {
  const found = measured.quantities.find((each) => each.name === name);
  if (found === undefined) throw new RangeError(`${name} was not measured`);
  return found;
}

describe('the photograph of a real wall with its published mapping', () => {
  test.each([
    [
      [0, 0],
      [8.382, 1868.215],
    ],
    [
      [511, 0],
      [0.917, 1.129],
    ],
    [
      [511, 511],
      [1324.352, 311.152],
    ],
    [
      [255.5, 255.5],
      [777.977189, 957.625918],
    ],
  ])('pixel %j lies at %j of the texture', ([x = 0, y = 0], [u = 0, v = 0]) => {
    const spot = mapped(TO_TEXTURE, { x, y });
    expect(spot.x).toBeCloseTo(u, 2);
    expect(spot.y).toBeCloseTo(v, 2);
  });

  // Measured from the same picture by another program, with its own fits; the texture repeats after 19 courses in 2048 pixels, which gives 107.79.
  test('gauge 107.97 ± 0.8', () => {
    expect(Math.abs(of('gauge').value - 107.97)).toBeLessThan(0.8);
    expect(Math.abs(of('gauge').value - 2048 / 19)).toBeLessThan(2 * of('gauge').sd);
  });

  test('joint to gauge 0.125 ± 0.010', () => {
    expect(Math.abs(of('bed-joint').value / of('gauge').value - 0.125)).toBeLessThan(0.01);
  });

  test('stretcher with its joint 290.8 ± 1.2', () => {
    expect(Math.abs(of('stretcher').value + of('head-joint').value - 290.8)).toBeLessThan(1.2);
  });

  test('the courses meet where the mapping says, within what real courses fan: vanishing point (219.8, −1244.9)', () => {
    const { mapping } = nominal(picture, measured.reference);
    const falls = measured.joints.beds.map(({ cuts }) => {
      const line = lineThrough(
        cuts.map(({ from, to }) => {
          const [a, b] = [mapping.toWall(from), mapping.toWall(to)];
          return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
        }),
      );
      return Math.atan(line.slope) * (180 / Math.PI);
    });
    const mean = falls.reduce((sum, fall) => sum + fall, 0) / falls.length;
    // Bed slopes when squared: mean 0.02°, standard deviation 0.29°.
    expect(Math.abs(mean - 0.02)).toBeLessThan(0.29);
    const vanishing = mapped(TO_TEXTURE, { x: 219.841, y: -1244.886 });
    expect(Math.abs(vanishing.y / vanishing.x)).toBeLessThan(1e-3);
  });

  test('at a gauge of 75 mm, joints of 10 ± 1 mm cannot be told', () => {
    const mm = 75 / 107.97;
    const known = { rules: 'canada', unit: { length: 192, height: 65 } } as const;
    const scaled = measurePhotograph(picture, brickReference(SHOWN, mm), known);
    const joint = scaled.quantities.find(({ name }) => name === 'bed-joint');
    expect(joint?.value).toBeCloseTo(9.4, 0);
    expect(joint?.verdict).toBe('cannot tell');
    expect(joint?.settle).toMatch(/^The photograph has 0\.\d\d pixels to a mm and this needs 1\./);
    expect(verdictOf(joint?.value ?? 0, joint?.sd ?? 0, { least: 9, most: 11 })).toBe('cannot tell');
  });

  test('is read alike when the four points begin at another corner', () => {
    const { corners } = brickReference(SHOWN);
    const turned = {
      kind: 'rectangle',
      corners: [corners[3], corners[0], corners[1], corners[2]],
      width: 1370,
      height: 1130,
    } as const;
    expect(findJoints(picture, turned).reference.corners).toEqual(corners);
  });
});
