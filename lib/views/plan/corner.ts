import { lengthDimension } from '../../drawing/dimension';
import { lines, type Pieces, type Spot } from '../../drawing/shape';
import type { Box } from '../../geometry/box';
import type { Point } from '../../geometry/polygon';
import type { LengthSystem, Mm } from '../../units';
import type { Panel, Wall } from '../../wall/model';
import { type CornerId, cornerId } from '../../wall/part-id';
import { length } from '../section/sheet';

/** How far along each face the corner is looked at, mm. */
const LEG: Mm = 1000;
/** From the drawing to its words, mm. */
const ASIDE: Mm = 160;

/** A corner seen from above. */
export interface CornerPlan extends Pieces {
  readonly spot: Spot;
}

interface Turn {
  readonly corner: CornerId;
  readonly straight: Panel;
  readonly turned: Panel;
  /** Along the straight wall and along the return, away from the corner, 1 mm long: x right, z out. */
  readonly along: Point;
  readonly away: Point;
}

/** The corner of a wall with a return; null where no two panels meet in one. */
export function turnOf({ panels }: Wall): Turn | null {
  for (const [index, right] of panels.entries()) {
    const left = panels[index - 1];
    if (left?.rightEnd !== 'corner' || right.leftEnd !== 'corner') continue;
    const fromLeft = direction(left, -1);
    const fromRight = direction(right, 1);
    const corner = cornerId(left.id, right.id);
    // The wall nearer to square with the viewer is the straight one.
    return Math.abs(fromLeft[1]) <= Math.abs(fromRight[1])
      ? { corner, straight: left, turned: right, along: fromLeft, away: fromRight }
      : { corner, straight: right, turned: left, along: fromRight, away: fromLeft };
  }
  return null;
}

/** How far the point 1 m along the return lies off the line square to the other wall, mm. */
export function offSquare({ along, away }: Turn): Mm {
  return Math.abs(LEG * (along[0] * away[0] + along[1] * away[1]));
}

/**
 * The two face lines from above, the viewer below: the square line dotted, and how far 1 m along the return lies off it. Its upper
 * left corner stands at (x, y). A measurement, no verdict.
 */
export function cornerPlan(turn: Turn, x: Mm, y: Mm, system: LengthSystem): CornerPlan {
  const { along, away, corner, straight, turned } = turn;
  // Out of the wall is down on the sheet.
  const end: Point = [along[0] * LEG, -along[1] * LEG];
  const tip: Point = [away[0] * LEG, -away[1] * LEG];
  const share = (end[0] * tip[0] + end[1] * tip[1]) / (LEG * LEG);
  const foot: Point = [tip[0] - end[0] * share, tip[1] - end[1] * share];
  const beyond: Point = [foot[0] * 1.08, foot[1] * 1.08];
  const all = [[0, 0] as Point, end, tip, beyond];
  const left = Math.min(...all.map(([px]) => px));
  const top = Math.max(...all.map(([, py]) => py));
  const at = ([px, py]: Point): Point => [x + px - left, y + py - top];
  const box: Box = {
    x,
    y: y + Math.min(...all.map(([, py]) => py)) - top,
    width: Math.max(...all.map(([px]) => px)) - left,
    height: top - Math.min(...all.map(([, py]) => py)),
  };
  const [from, to] = [at(tip), at(foot)];
  const tick = lengthDimension(from[0], to[0], from[1], 26, 0, system);
  const words = [
    'Corner from above',
    `${length(LEG, system)} along wall ${turned.id}:`,
    `${length(offSquare(turn), system)} off the dotted`,
    `line square to wall ${straight.id}`,
  ];
  return {
    shapes: [
      lines([[at(end), at([0, 0]), at(tip)]], { paint: '--ink', width: 3, thin: true }),
      lines([[at([0, 0]), at(beyond)]], { paint: '--chalk', width: 2, thin: true, dash: [2, 4] }),
      ...tick.shapes,
    ],
    labels: words.map((text, index) => ({
      at: [box.x + box.width + ASIDE, y],
      rise: -0.7 - 1.35 * index,
      text,
      anchor: 'start',
    })),
    spot: { part: corner, ...box },
  };
}

/** The direction of a face line in plan, from its left end (1) or from its right end (−1). */
function direction({ plan }: Panel, sense: 1 | -1): Point {
  const [x, z] = [(plan.rightX - plan.leftX) * sense, (plan.rightZ - plan.leftZ) * sense];
  const long = Math.sqrt(x * x + z * z);
  return [x / long, z / long];
}
