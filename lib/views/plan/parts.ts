import { cut, SHEATHING } from '../../drawing/cut';
import { ring } from '../../drawing/rings';
import { type Area, lines, type Paint, rect, type Shape } from '../../drawing/shape';
import type { Box } from '../../geometry/box';
import { type Ring, rectRing } from '../../geometry/polygon';
import type { Mm } from '../../units';
import type { Cut, Opening, Unit, Wall } from '../../wall/model';
import type { PanelSurvey } from '../../wall/survey';
import { fillOf } from '../front/units';
import { faceDepth } from '../unit-outline';

/** In a plan x runs along the wall and out of the wall is down: y = −z. */
const STUD: Mm = 38;
/** So much of a stud is shown; the rest is cut off, mm. */
const STUD_SHOWN: Mm = 70;
/** A frame is this wide and this deep, mm. */
const FRAME_WIDE: Mm = 62;
const FRAME_DEEP: Mm = 78;

/** A unit from above (`up` 1), from below (`up` 0) or cut at that share of its height and hatched with `hatching`: its face where it stands, its back straight behind. */
export function planUnit(unit: Unit, up: number, hatching?: Paint): readonly Area[] {
  const left = faceDepth(unit, 0, up);
  const right = faceDepth(unit, 1, up);
  const ring: Ring = [
    [unit.x, 0 - left],
    [unit.x + unit.length, 0 - right],
    [unit.x + unit.length, unit.depth - right],
    [unit.x, unit.depth - left],
  ];
  if (hatching !== undefined) return [cut(ring, hatching)];
  return [
    { kind: 'area', rings: [ring], fill: fillOf(unit), pen: { paint: '#22272b', width: 1 } },
    { kind: 'area', rings: [ring], fill: 'url:fleck' },
    ...(unit.cut !== undefined && up === 1 ? slopesOf(unit, unit.cut) : []),
  ];
}

/** Ends that are cut to a slope, seen from above: in shade from where the top ends to where the foot does. */
function slopesOf(unit: Unit, { left, right }: Cut): readonly Area[] {
  const { x, length, depth, set } = unit;
  const end = x + length;
  const rings = [
    ...(left > 0 ? [rectRing(x, 0 - set, left, depth)] : []),
    ...(right > 0 ? [rectRing(end - right, 0 - set, right, depth)] : []),
  ];
  return [{ kind: 'area', rings, fill: '#1a1310', opacity: 0.22, pen: { paint: '#22272b', width: 1 } }];
}

/** Box of a unit in plan. */
export function planBox({ x, length, depth, set }: Unit): Box {
  return { x, y: 0 - set, width: length, height: depth };
}

/** How far the back of the studs (or of the wall an adhered veneer hangs on) lies behind the face line, mm. */
export function planDepth(wall: Wall): Mm {
  return wall.family.depth + wall.cavity + SHEATHING + STUD_SHOWN;
}

/** Air space, sheathing and studs between two places along the wall. */
export function planBacking(wall: Wall, { panel }: PanelSurvey, from: Mm, to: Mm): readonly Shape[] {
  const face = wall.family.depth + wall.cavity;
  const width = to - from;
  const studs = panel.studs.filter((stud) => stud > from - STUD / 2 && stud < to + STUD / 2);
  return [
    ...(wall.cavity > 0
      ? [rect({ x: from, y: wall.family.depth, width, height: wall.cavity }, '--air')]
      : []),
    rect({ x: from, y: face, width, height: SHEATHING }, 'url:cut-wood'),
    lines(
      [face, face + SHEATHING].map((y) => ring(from, y, to, y)),
      { paint: '#22272b', width: 1.4 },
    ),
    ...studs.map((stud): Shape => {
      const left = Math.max(from, stud - STUD / 2);
      const right = Math.min(to, stud + STUD / 2);
      return rect({ x: left, y: face + SHEATHING, width: right - left, height: STUD_SHOWN }, 'url:cut-wood');
    }),
  ];
}

/** The face line of the wall, as a line is stretched for laying: dashed, in the blue of a chalk line. */
export function planLine(from: Mm, to: Mm): Shape {
  return lines([ring(from, 0, to, 0)], { paint: '--chalk', width: 1.6, thin: true, dash: [8, 4] });
}

/** The part of an opening between two places: jambs of the frame where they lie there, and the pane. */
export function planOpening(wall: Wall, { x, width, kind }: Opening, from: Mm, to: Mm): readonly Shape[] {
  const face = wall.family.depth + wall.cavity;
  const between = (left: Mm, right: Mm, y: Mm, height: Mm, fill: string): readonly Shape[] => {
    const start = Math.max(left, from);
    const end = Math.min(right, to);
    return end > start ? [rect({ x: start, y, width: end - start, height }, fill)] : [];
  };
  const end = x + width;
  const [deep, paint] = kind === 'window' ? [22, '#9db6c4'] : [44, '#5d7268'];
  return [
    ...between(x, end, wall.family.depth, wall.cavity + SHEATHING + STUD_SHOWN, '--paper'),
    ...between(x, x + FRAME_WIDE, face, FRAME_DEEP, 'url:cut-wood'),
    ...between(end - FRAME_WIDE, end, face, FRAME_DEEP, 'url:cut-wood'),
    ...between(x + FRAME_WIDE, end - FRAME_WIDE, face + 28, deep, paint),
  ];
}

/** The head of a frame from below, over the whole width of its opening. */
export function planHead(wall: Wall, { x, width }: Opening): readonly Shape[] {
  const face = wall.family.depth + wall.cavity;
  return [
    rect({ x, y: face, width, height: SHEATHING + STUD_SHOWN }, '#8f8a7e'),
    rect({ x, y: face, width, height: FRAME_DEEP }, '#ece7da'),
    rect({ x, y: face + 28, width, height: 22 }, '#b9c9d2'),
  ];
}
