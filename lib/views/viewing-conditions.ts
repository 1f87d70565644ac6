import type { Mm } from '../units';

export type Distance = 'near' | 'six metres' | 'ten metres';

/** How far the viewer stands from the face, and in what light. */
export interface ViewingConditions {
  readonly distance: Distance;
  /**
   * Where the sun stands: degrees round from straight in front of the wall, negative to the left, 45° high. Null: ordinary
   * daylight from the upper left.
   */
  readonly sun: number | null;
}

/** Up close, in ordinary daylight. */
export const UP_CLOSE: ViewingConditions = { distance: 'near', sun: null };

/** The sun goes no further round than this: at 90° it no longer reaches the face. */
export const SUN_REACH = 80;

/** How far a step of 1 mm throws its shadow on the face, mm: to the right (negative: left) and down. */
export interface Light {
  readonly right: number;
  readonly down: number;
}

/** Ordinary daylight for these drawings: the sun about 58° round to the left and 53° high (tan 58° = 1.6; tan 53° ÷ cos 58° = 2.5). */
export const DAYLIGHT: Light = { right: 1.6, down: 2.5 };

/**
 * The shadow of a step of 1 mm under a sun 45° high, `sun` degrees round. With the sun γ round from the wall's normal and h high, a
 * point that stands out by p throws its shadow p × tan γ sideways and p × tan h ÷ cos γ down (the wall's plane cuts the ray;
 * solar geometry). tan 45° is 1: at 60° one millimetre throws 1.73 mm sideways and 2 mm down, at 0° nothing sideways and 1 mm down.
 */
export function lightOf({ sun }: ViewingConditions): Light {
  if (sun === null) return DAYLIGHT;
  const round = (Math.min(SUN_REACH, Math.max(-SUN_REACH, sun)) * Math.PI) / 180;
  return { right: 0 - Math.tan(round), down: 1 / Math.cos(round) };
}

/** Metres: the distances from which finished work is judged (Saskatchewan warranty programme 2014, 6 m; NHBC Standards 2019 9.1.2, 10 m). */
const METRES: Readonly<Record<Exclude<Distance, 'near'>, number>> = {
  'six metres': 6,
  'ten metres': 10,
};

/** One minute of arc covers this much at one metre, mm: tan(1/60°) × 1000. */
const MINUTE_AT_ONE_METRE: Mm = 0.29089;

/**
 * The finest detail a good eye tells apart from there, mm: one minute of arc (common practice for full sight): 1.7 mm at 6 m, 2.9 mm
 * at 10 m. Zero up close. A step along an edge is seen far below that (vernier acuity, about 5 seconds), and so it is on a blurred drawing.
 */
export function finestSeen(distance: Distance): Mm {
  return distance === 'near' ? 0 : METRES[distance] * MINUTE_AT_ONE_METRE;
}

/** Standard deviation of the blur whose full width at half height is the finest detail seen, mm (width = 2.3548 σ). */
export function blurOf(distance: Distance): Mm {
  return finestSeen(distance) / 2.3548;
}
