import type { CheckId } from '../../lib/inspect/finding';

/** The lesson that has a passage on each fault, under "What goes wrong". A test looks it up in the lessons. */
export const LESSON_OF: Readonly<Record<CheckId, string>> = {
  'missing-back-mortar': 'back-buttering',
  'ring-buttered-back': 'back-buttering',
  'tapering-bed': 'full-joints',
  'thick-joint': 'full-joints',
  'thin-joint': 'full-joints',
  'open-head': 'full-joints',
  'raked-thin-veneer': 'full-joints',
  'course-off-level': 'line-level-plumb',
  'gauge-drift': 'line-level-plumb',
  'perpend-drift': 'setting-out-and-bond',
  'bulge-or-hollow': 'line-level-plumb',
  'out-of-plumb': 'line-level-plumb',
  'twisted-unit': 'line-level-plumb',
  'proud-unit': 'line-level-plumb',
  'corner-not-square': 'line-level-plumb',
  'sliver-piece': 'setting-out-and-bond',
  'overhang-too-far': 'what-carries-the-wall',
  'no-bearing-return': 'what-carries-the-wall',
  'short-lintel-bearing': 'openings',
  'no-lintel': 'openings',
  'weak-angle': 'openings',
  'ties-too-far-apart': 'ties',
  'no-tie-at-edge': 'ties',
  'shallow-tie': 'ties',
  'thin-tie': 'ties',
  'stale-mortar': 'mortar',
  'lean-mortar': 'mortar',
};

/** Address of the passage of the lesson on a fault. */
export function passageOf(check: CheckId): string {
  return `/lessons/${LESSON_OF[check]}#fault-${check}`;
}
