/**
 * Cautions, to be shown beside anything that could fall, beside limits and beside drawings. No figures: a safe distance is for the place, not for us.
 * Source: common practice on sites, in our own words.
 */

/** For every fault whose hazard is `could fall`, the most urgent first. */
export const COULD_FALL_CAUTIONS: readonly string[] = [
  'This could fall. Keep people and animals away now.',
  'Clear the ground on both sides, farther out than the wall is tall.',
  'Do not pull, push, hit or shake it. Do not climb it or lean a ladder on it.',
  'Do not fill the gap or prop it yourself.',
  'Ask a competent person at once. A licensed engineer says whether it is safe.',
];

/** For pages that show limits. */
export const LIMIT_CAUTIONS: readonly string[] = [
  'Rules differ from place to place and change over time. Check the edition in force where you build.',
  'Local code, the drawings and the authority having jurisdiction decide.',
  'A wall within every limit shown here can still be unsafe. Much of it is out of sight.',
];

/** For every drawn wall. */
export const DRAWING_CAUTIONS: readonly string[] = [
  'This is a drawing, not your wall.',
  'Local code and the authority having jurisdiction decide.',
];
