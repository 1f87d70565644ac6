import type { Shape } from '../../drawing/shape';
import type { Point, Ring } from '../../geometry/polygon';
import type { Mm } from '../../units';
import { topLeft, topRight } from '../../wall/cut';
import type { Unit } from '../../wall/model';
import { type PanelSurvey, type Placed, undersideAt } from '../../wall/survey';
import { courseRows, partBeside } from '../course-rows';
import { faceDepth, faceOf } from '../unit-outline';
import { DAYLIGHT, type Light } from '../viewing-conditions';

/** Shadows shorter than this are not worth a shape; the eye does not see them, mm. */
const LEAST_SHADOW: Mm = 1.875;

interface Cast {
  readonly light: Light;
  readonly leastStep: Mm;
  readonly dark: Ring[];
  readonly bright: Ring[];
}

/**
 * Shadows that units standing proud throw on what stands behind them, and the light on edges that catch it: in proportion to the
 * step. The light comes from the left (`right` is not negative).
 */
export function frontShadows(survey: PanelSurvey, light: Light = DAYLIGHT): readonly Shape[] {
  const { panel } = survey;
  const dark: Ring[] = [];
  const bright: Ring[] = [];
  const cast: Cast = { light, leastStep: LEAST_SHADOW / Math.max(light.down, light.right), dark, bright };
  for (const [index, row] of courseRows(survey).entries()) {
    for (const { placed: each, unit, right } of row) {
      if (unit.course === index + 1) {
        for (const [at, lower] of each.below.entries())
          underneath(each, lower, each.below[at + 1] ?? null, cast);
      }
      // Two that both stand through from below are looked at in the course they start in.
      if (right !== null && Math.max(unit.course, right.unit.course) === index + 1) beside(each, right, cast);
    }
  }
  // Past the end of the wall there is nothing to throw a shadow on.
  const onWall = dark.map((ring) => ring.map(([x, y]): Point => [Math.min(panel.length, x), y]));
  return [
    ...(dark.length > 0 ? [{ kind: 'area', rings: onWall, fill: '#170c08', opacity: 0.55 } as const] : []),
    ...(bright.length > 0 ? [{ kind: 'area', rings: bright, fill: '#fff1dc', opacity: 0.5 } as const] : []),
  ];
}

/** How far the foot of one unit stands out over the crown of another at x. */
function stepAt(upper: Unit, lower: Unit, x: Mm): Mm {
  return (
    faceDepth(upper, (x - upper.x) / upper.length, 0) - faceDepth(lower, (x - lower.x) / lower.length, 1)
  );
}

/** Across the bed between a unit and one it stands on. */
function underneath(
  upper: Placed,
  lower: Placed,
  next: Placed | null,
  { light, leastStep, dark, bright }: Cast,
): void {
  const { unit: over } = upper;
  const { unit: under } = lower;
  const from = Math.max(over.x, topLeft(under));
  const end = Math.min(over.x + over.length, topRight(under));
  if (end <= from) return;
  const foot = (x: Mm): Mm => undersideAt(over, x);
  const crown = (x: Mm): Mm => undersideAt(under, x) + under.height;
  const [atFrom, atEnd] = [stepAt(over, under, from), stepAt(over, under, end)];
  if (Math.max(atFrom, atEnd) >= leastStep) {
    const to = shadowEnd(upper, lower, next, leastStep);
    const ring = shadowUnder(
      [from, foot(from)],
      [to, foot(to)],
      Math.max(0, atFrom),
      Math.max(0, atEnd),
      light,
    );
    // Where the next unit below stands out as far as this one, the shadow stops at it.
    const beyond = lower.right?.unit;
    const stops = beyond && end > beyond.x - upper.unit.length && stepAt(over, beyond, beyond.x) < leastStep;
    dark.push(stops ? ring.map(([x, y]): Point => [Math.min(x, beyond.x), y]) : ring);
  }
  if (Math.min(atFrom, atEnd) <= -leastStep) {
    // The lower unit stands out: its top arris catches the light, half as wide as the step.
    const lit = Math.min(topRight(under), upper.right?.unit.x ?? end);
    bright.push([
      [from, crown(from)],
      [lit, crown(lit)],
      [lit, crown(lit) - Math.max(0, -atEnd) / 2],
      [from, crown(from) - Math.max(0, -atFrom) / 2],
    ]);
  }
}

/** A shadow runs on over the head joint to the next unit below, and under the one to the next unit above if that throws one too. */
function shadowEnd({ unit, right }: Placed, lower: Placed, next: Placed | null, leastStep: Mm): Mm {
  const end = unit.x + unit.length;
  if (next !== null) return Math.min(end, next.unit.x);
  const lowerEnd = topRight(lower.unit);
  const goesOn =
    right !== null && right.unit.x < lowerEnd && stepAt(right.unit, lower.unit, right.unit.x) >= leastStep;
  return Math.min(lowerEnd, goesOn ? right.unit.x : end);
}

/** Across the head joint between two neighbours. */
function beside(left: Placed, right: Placed, { light, leastStep, dark, bright }: Cast): void {
  const from = partBeside(left.unit, right);
  const to = partBeside(right.unit, left);
  const top = faceDepth(from, 1, 1) - faceDepth(to, 0, 1);
  const bottom = faceDepth(from, 1, 0) - faceDepth(to, 0, 0);
  const [, lowRight, highRight] = faceOf(from);
  const [lowLeft, , , highLeft] = faceOf(to);
  if (Math.max(top, bottom) >= leastStep) {
    const ring = shadowBeside(lowRight, highRight, Math.max(0, bottom), Math.max(0, top), light);
    // A unit that stands out over what is below it, too, throws the corner of the shadow down there; else it ends at the bed.
    const corner = left.below.some(({ unit }) => stepAt(left.unit, unit, lowRight[0]) >= leastStep);
    dark.push(corner ? ring : ring.map(([x, y]): Point => [x, Math.max(y, lowRight[1])]));
  }
  if (Math.min(top, bottom) <= -leastStep) {
    bright.push([
      lowLeft,
      highLeft,
      [highLeft[0] + Math.max(0, -top) / 2, highLeft[1]],
      [lowLeft[0] + Math.max(0, -bottom) / 2, lowLeft[1]],
    ]);
  }
}

/** Shadow below an edge from one point to another, for steps at its two ends. */
export function shadowUnder(from: Point, to: Point, stepFrom: Mm, stepTo: Mm, { right, down }: Light): Ring {
  return [
    from,
    to,
    [to[0] + stepTo * right, to[1] - stepTo * down],
    [from[0] + stepFrom * right, from[1] - stepFrom * down],
  ];
}

/** Shadow to the right of an upright edge, for steps at its foot and head. */
export function shadowBeside(
  foot: Point,
  head: Point,
  stepFoot: Mm,
  stepHead: Mm,
  { right, down }: Light,
): Ring {
  return [
    foot,
    head,
    [head[0] + stepHead * right, head[1] - stepHead * down],
    [foot[0] + stepFoot * right, foot[1] - stepFoot * down],
  ];
}
