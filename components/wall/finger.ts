import type { Target } from '../../lib/views/pointing/targets';

/** A finger needs courses at least this high to tell parts apart; a first tap brings them to the working height, px. A glove needs more. */
const BARE = { least: 24, working: 48 };
const GLOVED = { least: 44, working: 76 };

/**
 * How much nearer a finger has to come before its tap can pick: null where courses this high (px) are high enough to aim at, or the
 * part under the finger is large enough itself.
 */
export function fingerZoom(target: Target | null, courseHigh: number, mmPerPx: number): number | null {
  const { least, working } = document.documentElement.dataset.targets === 'gloves' ? GLOVED : BARE;
  if (courseHigh >= least) return null;
  const small = target === null || Math.min(target.box.width, target.box.height) / mmPerPx < least;
  return small ? working / courseHigh : null;
}
