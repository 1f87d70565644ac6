import type { Mm } from '../units';
import type { PanelSurvey, Placed } from '../wall/survey';
import type { Point, Shape } from './shape';
import { faceDepth, faceOf } from './unit-outline';

/** Light from the upper left, raking: a step of 1 mm throws a shadow this far down and this far to the right, mm. */
export const SHADOW_DOWN = 2.5;
export const SHADOW_RIGHT = 1.6;
/** Smaller steps than this are not worth a shape; the eye does not see them. */
const LEAST_STEP: Mm = 0.75;

/** Shadows that units standing proud throw on what stands behind them, and the light on edges that catch it: in proportion to the step. */
export function frontShadows({ placed }: PanelSurvey): readonly Shape[] {
  const dark: (readonly Point[])[] = [];
  const bright: (readonly Point[])[] = [];
  for (const each of placed) {
    for (const [index, lower] of each.below.entries())
      underneath(each, lower, each.below[index + 1] ?? null, dark, bright);
    if (each.right !== null) beside(each, each.right, dark, bright);
  }
  return [
    ...(dark.length > 0 ? [{ kind: 'area', rings: dark, fill: '#170c08', opacity: 0.55 } as const] : []),
    ...(bright.length > 0 ? [{ kind: 'area', rings: bright, fill: '#fff1dc', opacity: 0.5 } as const] : []),
  ];
}

/** Across the bed between a unit and one it stands on. */
function underneath(
  upper: Placed,
  lower: Placed,
  next: Placed | null,
  dark: (readonly Point[])[],
  bright: (readonly Point[])[],
): void {
  const end = upper.unit.x + upper.unit.length;
  const from = Math.max(upper.unit.x, lower.unit.x);
  // The head joint to the next unit below lies in the same shadow.
  const to = Math.min(end, next === null ? lower.unit.x + lower.unit.length : next.unit.x);
  if (to <= from) return;
  const step = (x: Mm): Mm =>
    faceDepth(upper.unit, (x - upper.unit.x) / upper.unit.length, 0) -
    faceDepth(lower.unit, (x - lower.unit.x) / lower.unit.length, 1);
  const [atFrom, atTo] = [step(from), step(to)];
  const foot = (x: Mm): Mm => upper.unit.y - (upper.unit.fall * (x - upper.unit.x)) / upper.unit.length;
  const crown = (x: Mm): Mm =>
    lower.unit.y + lower.unit.height - (lower.unit.fall * (x - lower.unit.x)) / lower.unit.length;
  if (Math.max(atFrom, atTo) >= LEAST_STEP) {
    dark.push(shadowUnder([from, foot(from)], [to, foot(to)], Math.max(0, atFrom), Math.max(0, atTo)));
  }
  if (Math.min(atFrom, atTo) <= -LEAST_STEP) {
    // The lower unit stands out: its top arris catches the light, half as wide as the step.
    const lit = Math.min(lower.unit.x + lower.unit.length, upper.right?.unit.x ?? to);
    bright.push([
      [from, crown(from)],
      [lit, crown(lit)],
      [lit, crown(lit) - Math.max(0, -atTo) / 2],
      [from, crown(from) - Math.max(0, -atFrom) / 2],
    ]);
  }
}

/** Across the head joint between two neighbours. */
function beside(left: Placed, right: Placed, dark: (readonly Point[])[], bright: (readonly Point[])[]): void {
  const top = faceDepth(left.unit, 1, 1) - faceDepth(right.unit, 0, 1);
  const bottom = faceDepth(left.unit, 1, 0) - faceDepth(right.unit, 0, 0);
  const [, lowRight, highRight] = faceOf(left.unit);
  const [lowLeft, , , highLeft] = faceOf(right.unit);
  if (Math.max(top, bottom) >= LEAST_STEP)
    dark.push(shadowBeside(lowRight, highRight, Math.max(0, bottom), Math.max(0, top)));
  if (Math.min(top, bottom) <= -LEAST_STEP) {
    bright.push([
      lowLeft,
      highLeft,
      [highLeft[0] + Math.max(0, -top) / 2, highLeft[1]],
      [lowLeft[0] + Math.max(0, -bottom) / 2, lowLeft[1]],
    ]);
  }
}

/** Shadow below an edge from one point to another, for steps at its two ends. */
export function shadowUnder(from: Point, to: Point, stepFrom: Mm, stepTo: Mm): readonly Point[] {
  return [
    from,
    to,
    [to[0] + stepTo * SHADOW_RIGHT, to[1] - stepTo * SHADOW_DOWN],
    [from[0] + stepFrom * SHADOW_RIGHT, from[1] - stepFrom * SHADOW_DOWN],
  ];
}

/** Shadow to the right of an upright edge, for steps at its foot and head. */
export function shadowBeside(foot: Point, head: Point, stepFoot: Mm, stepHead: Mm): readonly Point[] {
  return [
    foot,
    head,
    [head[0] + stepHead * SHADOW_RIGHT, head[1] - stepHead * SHADOW_DOWN],
    [foot[0] + stepFoot * SHADOW_RIGHT, foot[1] - stepFoot * SHADOW_DOWN],
  ];
}
