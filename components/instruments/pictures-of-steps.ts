import { ring, round, rounded, turnAbout, turnedAbout } from '../../lib/drawing/rings';
import { labelAt, lines, polygon, rect, type Shape } from '../../lib/drawing/shape';
import { clipped } from '../../lib/geometry/box';
import { rectRing } from '../../lib/geometry/polygon';
import {
  BODY,
  blade,
  bricks,
  type Drawn,
  rowOf,
  type Shown,
  SLATE,
  shownValue,
  steel,
  TICK,
  within,
} from './picture-parts';

const FIVE = [0, 1, 2, 3, 4] as const;

/** The edge on two sound units, with a feeler leaf in the gap that is left; or a strap, with leaves beside it as thick as it is. */
export function feelerPicture(shown: Shown): Drawn {
  const { reading } = shown;
  if (reading?.fine) return strapPicture();
  const gap = within(shownValue(shown), 0, 9) * 2.2;
  const back = reading?.words === 'set back';
  const twists = reading?.what.startsWith('One end') ?? false;
  const side = reading?.words?.startsWith('left') ? -1 : 1;
  const open = twists ? gap / 2 : gap;
  const unit = { y: 8, width: 72, height: 50 };
  const odd = { ...unit, x: 86, y: 8 + (twists ? 0 : back ? -gap : gap) };
  const leaf = rectRing(back ? 100 : side === 1 ? 14 : 182, back ? 58 - open : 58, 46, open);
  return {
    shapes: [
      ...bricks([10, 162].map((x) => ({ ...unit, x }))),
      ...bricks([odd], turnAbout([122, 58], twists ? side * gap * 0.3 : 0)),
      steel(rectRing(4, 58 + (back ? 0 : open), 236, 12)),
      ...(gap > 0 ? [blade(leaf)] : []),
      ...leaves(),
    ],
  };
}

function strapPicture(): Drawn {
  const wave = Array.from(
    { length: 57 },
    (_, index) => [14 + index * 2, 46 + 3.5 * Math.sin((Math.PI * index) / 8)] as const,
  );
  return {
    shapes: [
      rect({ x: 4, y: 6, width: 240, height: 30 }, 'url:mortar'),
      lines([wave], { paint: '#5e6a71', width: 5 }),
      ...[0, 1, 2].map((leaf) => blade(rectRing(150, 37 + leaf * 4, 80, 4))),
      steel(rectRing(20, 52, 204, 12)),
      ...leaves(),
    ],
  };
}

function leaves(): readonly Shape[] {
  return [
    ...FIVE.map((leaf) => steel(turnedAbout([292, 28], 44 - leaf * 14, rounded(287, 28, 10, 66, 4)))),
    polygon(round(292, 28, 8), BODY),
  ];
}

/** The rod's marks beside the courses: where they part, the wall has gained or lost. */
export function rodPicture(shown: Shown): Drawn {
  const { reading } = shown;
  const over = reading?.words?.startsWith('under') || reading?.words?.startsWith('less') ? -1 : 1;
  const step = within(shownValue(shown) * 0.25, 0, 5) * over;
  const wall = { x: 110, y: 4, width: 206, height: 116 };
  const courses = FIVE.flatMap((row) =>
    rowOf({ x: row % 2 ? 72 : 110, y: 5 + row * (22 + step), width: 66, height: 17 }, row % 2 ? 4 : 3),
  );
  return {
    shapes: [
      rect(wall, 'url:mortar'),
      ...bricks(courses.map((unit) => clipped(unit, wall))),
      blade(rectRing(62, -2, 26, 124)),
      lines(
        FIVE.map((row) => ring(62, 5 + row * 22, 80, 5 + row * 22)),
        TICK,
      ),
      lines(
        FIVE.map((row) => ring(88, 5 + row * 22, 108, 5 + row * (22 + step))),
        SLATE,
      ),
    ],
    labels: FIVE.map((row) => labelAt(56, 6 + row * 22, `${row + 1}`, 'end')),
  };
}
