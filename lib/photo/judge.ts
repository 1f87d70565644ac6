import { type Bounds, SHORTEST_RUN } from './bounds';
import type { QuantityName } from './quantities';
import type { Reference } from './reference';

/** The three things that a photograph can say of a limit. */
export type Verdict = 'within' | 'beyond' | 'cannot tell';

/** How a quantity stands to its limit, and where that stays open, what would settle it. */
export interface Judged {
  readonly verdict: Verdict;
  readonly settle?: string;
}

/** What the judgement hangs on beside the figures. */
export interface Grounds {
  /** Pixels of the photograph to a mm of the wall, where they are fewest. */
  readonly pixelsPerMm: number;
  /** Blur over the width of a bed. */
  readonly softness: number;
  readonly reference: Reference['kind'];
  /** Whether the reference was set level or plumb by something else than the wall. */
  readonly isLevelled: boolean;
  /** How far along the wall the courses were seen, mm. */
  readonly run: number;
}

/** Twice the standard deviation on either side: about 95 of 100 true values lie in there. */
const SURE = 2;
/** The fewest pixels to a mm that joints need, and that courses, laps and pieces need. */
const PIXELS = { joints: 1, courses: 0.5 } as const;
/** A joint less than two and a half times as wide as its blur cannot be told from its contrast. */
const SOFTEST = 1 / 2.5;

const JOINTS = /bed|head/;
/** What the four corners take for granted when they lie on the wall's own lines. */
const NEEDS_LEVEL: readonly QuantityName[] = ['course-level', 'perpend-drift'];

/** A value with its standard deviation against its bounds: wholly inside, wholly outside, or neither. */
export function verdictOf(
  value: number,
  sd: number,
  { least = -Infinity, most = Infinity }: Pick<Bounds, 'least' | 'most'>,
): Verdict {
  const [low, high] = [value - SURE * sd, value + SURE * sd];
  if (low >= least && high <= most) return 'within';
  return high < least || low > most ? 'beyond' : 'cannot tell';
}

export function judge(
  name: QuantityName,
  value: number,
  sd: number,
  bounds: Bounds | undefined,
  grounds: Grounds,
): Judged {
  const open = whyOpen(name, bounds, grounds);
  if (open !== undefined) return { verdict: 'cannot tell', settle: open };
  const verdict = verdictOf(value, sd, bounds ?? {});
  if (verdict !== 'cannot tell') return { verdict };
  return {
    verdict,
    settle: JOINTS.test(name)
      ? 'It is too near the limit for this photograph. Measure the joint itself with a tape.'
      : 'It is too near the limit for this photograph. Measure it on the wall with a tape or a level.',
  };
}

function whyOpen(name: QuantityName, bounds: Bounds | undefined, grounds: Grounds): string | undefined {
  const { pixelsPerMm, softness, reference, isLevelled, run } = grounds;
  const isJoint = JOINTS.test(name);
  const needed = isJoint ? PIXELS.joints : PIXELS.courses;
  if (name === 'smallest-piece')
    return 'The limit goes by how thick the unit is from front to back. Measure that at an end.';
  if (name === 'gauge' && bounds === undefined) return 'Say how long and how high a unit is.';
  if (name === 'gauge' && reference === 'counts')
    return 'The courses were counted to find the scale, so they cannot be checked by it. Measure their height with a tape.';
  if (name === 'course-level' && run < SHORTEST_RUN)
    return 'The courses must be seen for at least a metre. Measure a longer piece of the wall.';
  if (bounds === undefined) return 'These rules give no figure for it.';
  if (NEEDS_LEVEL.includes(name) && !isLevelled)
    return 'The four points may lean with the wall. Hold a level against it, or a plumb line.';
  if (pixelsPerMm < needed)
    return `The photograph has ${pixelsPerMm.toFixed(2)} pixels to a mm and this needs ${needed}. Take it from nearer.`;
  if (isJoint && softness > SOFTEST)
    return 'The photograph is not sharp enough. Hold the camera still, and take it from nearer.';
  return undefined;
}
