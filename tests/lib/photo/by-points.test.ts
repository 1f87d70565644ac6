import { describe, expect, test } from 'vitest';
import { crackWidth, openingSquare } from '../../../lib/photo/by-points';
import { type Reference, rectangle } from '../../../lib/photo/reference';

/** Square on, four pixels to a mm. */
const FRAME = { width: 4000, height: 3000 };
const REFERENCE: Reference = { kind: 'rectangle', corners: rectangle(4000, 3000), width: 1000, height: 750 };
const KNOWN = { rules: 'canada' } as const;

describe('a crack between two points', () => {
  const crack = (pixels: number) =>
    crackWidth(
      FRAME,
      REFERENCE,
      [
        { x: 2000, y: 1500 },
        { x: 2000 + pixels, y: 1500 },
      ],
      KNOWN,
    );

  test('of 12 pixels is 3 mm wide; two points to half a pixel leave 0.18 mm', () => {
    const { value, sd, limit } = crack(12);
    expect(value).toBeCloseTo(3, 6);
    expect(sd).toBeCloseTo((0.5 * Math.SQRT2) / 4, 2);
    // Bands 0 to 2 of BRE Digest 251, as the limits hold them.
    expect(limit?.most).toBe(5);
  });

  test.each([
    [12, 'cannot tell'],
    [20, 'cannot tell'],
    [24, 'beyond'],
  ])('of %d pixels: %s, and never called safe', (pixels, verdict) => {
    expect(crack(pixels)).toMatchObject({
      verdict,
      settle: expect.stringMatching(/^No width makes a crack safe\./),
    });
  });
});

describe('the square of an opening', () => {
  const opening = (drop: number) =>
    openingSquare(
      FRAME,
      REFERENCE,
      [
        { x: 1000, y: 500 },
        { x: 3000, y: 500 + drop },
        { x: 3000, y: 2500 + drop },
        { x: 1000, y: 2500 },
      ],
      KNOWN,
    );

  test('a head that falls 20 pixels in 2000 is 10 mm in a metre off square', () => {
    expect(opening(20).value).toBeCloseTo(10, 2);
    expect(opening(0).value).toBeCloseTo(0, 6);
  });

  test('stays open: the four points may be off square themselves', () => {
    expect(opening(20)).toMatchObject({
      verdict: 'cannot tell',
      limit: undefined,
      settle: expect.stringMatching(/diagonals/),
    });
  });
});
