import { describe, expect, test } from 'vitest';
import type { Point } from '../../../lib/geometry/polygon';
import { frontView } from '../../../lib/views/front/front';
import { caughtMore } from '../../../lib/views/front/panel';
import { shadowUnder } from '../../../lib/views/front/shadows';
import { svgOf } from '../../../lib/views/print-svg';
import { blurOf, finestSeen, lightOf, UP_CLOSE } from '../../../lib/views/viewing-conditions';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { handWall, handWallWith } from './hand-wall';

const near = (sun: number | null) => ({ distance: 'near', sun }) as const;

/** The dark shadows on the front, furthest down first on the sheet. */
function shadowRings(wall: ReturnType<typeof handWall>, sun: number | null): readonly (readonly Point[])[] {
  const dark = frontView(surveyedWall(wall), 'mm', near(sun)).shapes.filter(
    (shape) => shape.fill === '#170c08',
  );
  return dark.flatMap((shape) => (shape.kind === 'area' ? shape.rings : []));
}

describe('a shadow under a sun 45° high', () => {
  // By hand: sideways p × tan γ, down p × tan 45° ÷ cos γ. cos 60° = 1/2, tan 60° = √3; cos 45° = 1/√2, tan 45° = 1.
  test.each([
    [0, 0, 1],
    [-45, 1, Math.SQRT2],
    [-60, Math.sqrt(3), 2],
    [60, -Math.sqrt(3), 2],
  ])('%s° round: 1 mm throws %s to the right and %s down', (sun, right, down) => {
    const light = lightOf(near(sun));
    expect(light.right).toBeCloseTo(right, 12);
    expect(light.down).toBeCloseTo(down, 12);
  });

  test('the sun goes no further round than 80°', () => {
    expect(lightOf(near(-90))).toEqual(lightOf(near(-80)));
  });

  test('without a sun: ordinary daylight', () => {
    expect(lightOf(UP_CLOSE)).toEqual({ right: 1.6, down: 2.5 });
  });

  test('4 mm proud, sun 60° to the left: 8 mm down, 6.93 mm to the right', () => {
    const [, , end] = shadowUnder([0, 0], [100, 0], 4, 4, lightOf(near(-60)));
    expect(end?.[0]).toBeCloseTo(106.93, 2);
    expect(end?.[1]).toBeCloseTo(-8, 12);
  });
});

describe('on the wall', () => {
  // A3.2 of the hand wall: x 210 to 410, underside at 150.
  const reach = (set: number, sun: number) =>
    150 -
    Math.min(...shadowRings(handWallWith('A3.2', { set }), sun).flatMap((ring) => ring.map(([, y]) => y)));

  test.each([
    [4, -60, 8],
    [8, -60, 16],
    [4, 60, 8],
    [4, 0, 4],
  ])('%s mm proud with the sun at %s° throws %s mm down', (set, sun, down) => {
    expect(reach(set, sun)).toBeCloseTo(down, 9);
  });

  test('sun from the right: the shadow lies to the left of the unit, sun from the left: to its right', () => {
    const sides = (sun: number) => {
      const xs = shadowRings(handWallWith('A3.2', { set: 4 }), sun).flatMap((ring) => ring.map(([x]) => x));
      return [Math.min(...xs) < 210 - 6, Math.max(...xs) > 410 + 6];
    };
    expect(sides(60)).toEqual([true, false]);
    expect(sides(-60)).toEqual([false, true]);
  });

  test('light from the right on a wall is light from the left on its mirror image', () => {
    const twisted = shadowRings(handWallWith('A3.2', { twist: 12 }), 60);
    const mirrorTwin = shadowRings(handWallWith('A3.2', { twist: -12 }), -60);
    const flippedBack = mirrorTwin.map((ring) =>
      ring.map(([x, y]) => `${(620 - x).toFixed(6)} ${y.toFixed(6)}`).sort(),
    );
    const drawn = twisted.map((ring) => ring.map(([x, y]) => `${x.toFixed(6)} ${y.toFixed(6)}`).sort());
    expect(drawn.sort()).toEqual(flippedBack.sort());
  });

  test('a unit set back lies in the shade of the one over it', () => {
    // 4 mm back, sun at 60°: 8 mm of shade below the underside (220) of the units over A3.2.
    const rings = shadowRings(handWallWith('A3.2', { set: -4 }), -60);
    const under = rings.filter((ring) => ring[0]?.[1] === 220);
    expect(under.map((ring) => Math.min(...ring.map(([, y]) => y)))).toEqual([212, 212]);
  });

  test('a unit that leans out by 8 mm throws a wedge beside its head, and takes one beside its foot', () => {
    // Its head stands 4 mm out, its foot 4 mm back. 4 mm under a sun at 60°: 6.93 mm to the right, 8 mm down.
    const rings = shadowRings(handWallWith('A3.2', { lean: 8 }), -60).map((ring) =>
      ring.map(([x, y]) => [Math.round(x * 100) / 100, Math.round(y * 100) / 100]),
    );
    expect(rings).toEqual([
      // Of the left neighbour, whose right end is at 200: from nothing at its head to 4 mm at its foot, cut off at the bed.
      [
        [200, 150],
        [200, 210],
        [200, 210],
        [206.93, 150],
      ],
      [
        [410, 150],
        [410, 210],
        [416.93, 202],
        [410, 150],
      ],
    ]);
  });

  test('low light shows steps that daylight hides: 0.5 mm', () => {
    const wall = handWallWith('A3.2', { set: 0.5 });
    expect(shadowRings(wall, null)).toEqual([]);
    // At 80° one millimetre throws 1 ÷ cos 80° = 5.76 mm down.
    expect(shadowRings(wall, -80).length).toBeGreaterThan(0);
  });
});

describe('from afar', () => {
  test('one minute of arc: 1.745 mm at 6 m, 2.909 mm at 10 m, as in the table of viewing distances', () => {
    expect(finestSeen('six metres')).toBeCloseTo(1.745, 3);
    expect(finestSeen('ten metres')).toBeCloseTo(2.909, 3);
    expect(finestSeen('near')).toBe(0);
  });

  test('a blur of that width at half its height', () => {
    // A bell curve is 2 × √(2 ln 2) = 2.3548 standard deviations wide at half its height.
    expect(blurOf('ten metres') * 2 * Math.sqrt(2 * Math.LN2)).toBeCloseTo(2.909, 3);
  });

  test('the wall is blurred, its dimensions are not', () => {
    const drawing = frontView(surveyedWall(handWall()), 'mm', { distance: 'ten metres', sun: null });
    const clear = frontView(surveyedWall(handWall()), 'mm');
    expect(drawing.haze?.blur).toBeCloseTo(1.235, 3);
    // Two dimension lines of five strokes each.
    expect(clear.shapes.length - (drawing.haze?.shapes ?? 0)).toBe(10);
    expect(drawing.shapes).toEqual(clear.shapes);
    expect(clear.haze).toBeUndefined();
  });

  test('a file has the blur in it once', () => {
    const svg = svgOf(surveyedWall(handWall()), { kind: 'front' }, [], 'mm', {
      distance: 'six metres',
      sun: null,
    });
    expect(svg.match(/<feGaussianBlur stdDeviation="0.741"\/>/g)).toHaveLength(1);
    expect(svg.match(/filter="url\(#haze\)"/g)).toHaveLength(1);
    expect(svgOf(surveyedWall(handWall()), { kind: 'front' })).not.toContain('filter');
  });
});

describe('how much light a face catches', () => {
  // Sun 60° to the left: right √3, down 2. A face 200 long whose right end stands 12 out looks to the left, towards the sun:
  // 12 ÷ 200 × 1.732 = 0.104 more. Turned the other way as much less.
  const light = lightOf(near(-60));
  const flat = { twist: 0, lean: 0, length: 200, height: 60 };
  test.each([
    [{}, 0],
    [{ twist: 12 }, 0.104],
    [{ twist: -12 }, -0.104],
    // A head 3 mm out on a height of 60 looks down, away from the sun: 0.05 × 2 less.
    [{ lean: 3 }, -0.1],
  ])('%j: %s more than a flat one', (change, more) => {
    expect(caughtMore({ ...flat, ...change }, light)).toBeCloseTo(more, 3);
  });
  test('only low light tells; a wall of sound scatter stays even', () => {
    const tones = (sun: number | null, change: Parameters<typeof handWallWith>[1]) =>
      frontView(surveyedWall(handWallWith('A3.2', change)), 'mm', near(sun)).shapes.length -
      frontView(surveyedWall(handWall()), 'mm', near(sun)).shapes.length;
    expect(tones(null, { twist: 12 }) < tones(-60, { twist: 12 })).toBe(true);
    // A quarter of a millimetre of twist at 80°: 0.25 ÷ 200 × 5.67 = 0.7 %.
    expect(tones(-80, { twist: 0.25 })).toBe(0);
  });
});
