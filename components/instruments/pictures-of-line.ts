import { ring, round, rounded, turnAbout, turnedAbout } from '../../lib/drawing/rings';
import { labelAt, lines, polygon, type Shape, solid } from '../../lib/drawing/shape';
import { type Point, type Ring, rectRing } from '../../lib/geometry/polygon';
import {
  BODY,
  blade,
  bricks,
  CHALK,
  type Drawn,
  rowOf,
  type Shown,
  SLATE,
  shownValue,
  steel,
  TICK,
  vial,
  within,
} from './picture-parts';

const ROWS = [0, 1, 2, 3, 4] as const;
const rowAt = (row: number) => ({ y: 98 - row * 24, height: 20 });

/** A level about its middle: so large, turned so far against the clock. */
function levelAt(
  [x, y]: Point,
  scale: number,
  degrees: number,
  slope: number,
  turned: boolean,
): readonly Shape[] {
  const turn = turnAbout([x, y], degrees);
  const put = (points: Ring) => points.map(([px, py]) => turn(x + px * scale, y + py * scale));
  return [
    polygon(put(rounded(-126, -17, 252, 34, 3)), BODY),
    polygon(put(rectRing(-126, -12, 252, 3)), '#ffffff', 0.4),
    vial(put(rounded(-36, -8, 72, 18, 9))),
    solid(put(round(slope * 2.4, 1, 11, 6.5)), '#f7fbe9', { paint: '#57682b', width: 1.5 * scale }),
    lines(
      [-13, 13].map((px) => put(ring(px, -8, px, 10))),
      TICK,
    ),
    solid(put(round(turned ? 112 : -112, 0, 5)), '--ochre', { paint: '#ffffff', width: scale }),
  ];
}

/** The level on its course, or upright on its face: the bubble goes to the high side. The dot is its first end. */
export function levelPicture(shown: Shown): Drawn {
  const { reading } = shown;
  const slope = reading?.unit === 'mm per m' ? within(shownValue(shown), -9, 9) : 0;
  const tilt = slope / 2;
  const turned = reading?.turned ?? false;
  if (reading?.what.startsWith('Lean')) {
    const face = ROWS.map((row) => ({ ...rowAt(row), x: 72, width: 66 }));
    return {
      shapes: [
        ...bricks(face, turnAbout([120, 2], -tilt)),
        ...levelAt([156, 60], 0.44, 90 - tilt, slope, turned),
      ],
    };
  }
  const course = rowOf({ x: 8, y: 12, width: 73, height: 34 }, 4);
  return {
    shapes: [...bricks(course, turnAbout([160, 46], tilt)), ...levelAt([160, 64], 1, tilt, slope, turned)],
  };
}

/** The bob hangs true; the face leaves it. */
export function plumbPicture(shown: Shown): Drawn {
  const { reading } = shown;
  const size = within(shownValue(shown), 0, 24) * 1.4;
  const lean = reading?.words?.includes('back') ? -size : size;
  const wanders = reading?.what.startsWith('This line') ?? false;
  const shift = (row: number) => (wanders ? (row % 2 === 0 ? 0 : size) : (lean * (4 - row)) / 4);
  const units = ROWS.flatMap((row) => {
    if (!wanders) return [{ ...rowAt(row), x: 70 + shift(row), width: 70 }];
    const head = 158 + shift(row) - size / 2;
    return [
      { ...rowAt(row), x: 60, width: head - 60 },
      { ...rowAt(row), x: head + 6, width: 254 - head },
    ];
  });
  const x = wanders ? 161 : 190;
  return {
    shapes: [
      ...bricks(units),
      lines([ring(x, 120, x, 32)], CHALK),
      steel(ring(x - 7, 32, x + 7, 32, x + 5, 18, x, 6, x - 5, 18)),
      ...(wanders
        ? []
        : [lines([ring(140 + shift(0), 108, 190, 108), ring(140 + shift(4), 36, 190, 36)], SLATE)]),
    ],
  };
}

/** Blocks at both ends, the line between them with its own sag, and the course under it; or seen from above, the face that bows. */
export function linePicture(shown: Shown): Drawn {
  const { reading } = shown;
  const size = within(shownValue(shown), 0, 24) * 1.2;
  const words = reading?.words ?? '';
  const bows = reading?.what.startsWith('Farthest') ?? false;
  const dips = reading?.what.startsWith('Middle') ?? false;
  const bulge = (index: number) => size * (1 - Math.abs(index - 2) / 2.5);
  const rise = (index: number) => {
    if (bows) return words.includes('hollow') ? bulge(index) : -bulge(index);
    if (dips) return words.startsWith('above') ? bulge(index) / 2 : -bulge(index);
    return -(size * (words.includes('high') ? 4 - index : index)) / 4;
  };
  const course = rowOf({ x: 20, y: bows ? 54 : 26, width: 52, height: 36 }, 5, rise);
  const line = bows ? ring(12, 26, 308, 26) : ring(12, 70, 86, 68.1, 160, 67.5, 234, 68.1, 308, 70);
  return {
    shapes: [
      ...bricks(course),
      lines([line], CHALK),
      ...[8, 300].map((x) => blade(rectRing(x, bows ? 18 : 62, 12, 16))),
      ...(bows ? [lines([ring(160, 54 + rise(2), 160, 26)], SLATE)] : []),
    ],
  };
}

/** The triangle laid into the corner, seen from above. */
export function squarePicture(shown: Shown): Drawn {
  const { reading } = shown;
  const off =
    reading?.unit === 'mm per m'
      ? within(shownValue(shown), 0, 30) * (reading.words === 'it closes' ? 0.35 : -0.35)
      : 0;
  // The return turns about the foot of its outer face, and its mark with it.
  const foot: Point = [210, 28];
  const mark = turnAbout(foot, off)(192, 106);
  return {
    shapes: [
      ...bricks([{ x: 20, y: 10, width: 190, height: 18 }]),
      ...bricks([{ x: 192, y: 28, width: 18, height: 86 }], turnAbout(foot, off)),
      lines([turnedAbout(foot, off, ring(192, 28, 192, 106)), ring(192, 28, 88, 28)], CHALK),
      lines([[[88, 28], mark]], { ...CHALK, dash: [5, 3] }),
      steel(ring(252, 90, 306, 90, 306, 80, 262, 80, 262, 20, 252, 20)),
    ],
    labels: [labelAt(140, 38, '4'), labelAt(184, 66, '3', 'end'), labelAt(130, 76, '5', 'end')],
  };
}
