import type { QuantityName } from './quantities';

/** What each quantity is, in plain words. */
export const QUANTITY_WORDS: Readonly<Record<QuantityName, string>> = {
  gauge: 'One course with its bed joint, on average',
  'course-spread': 'Course heights, how much they differ (standard deviation)',
  'tallest-course': 'Tallest course with its bed',
  'shortest-course': 'Lowest course with its bed',
  'bed-joint': 'Bed joints (the flat ones), on average',
  'bed-joint-spread': 'Bed joints, how much they differ (standard deviation)',
  'thickest-bed': 'Thickest bed joint',
  'thinnest-bed': 'Thinnest bed joint',
  'head-joint': 'Head joints (the upright ones), on average',
  'head-joint-spread': 'Head joints, how much they differ (standard deviation)',
  'widest-head': 'Widest head joint',
  'narrowest-head': 'Narrowest head joint',
  'course-level': 'Fall of the courses to the right, on average (minus: they rise)',
  'perpend-drift': 'Head joints that should stand above each other, farthest left to farthest right',
  lap: 'Least lap: from a head joint to the nearest one in the course below',
  stretcher: 'Whole unit, length of its face on average',
  'smallest-piece': 'Shortest piece',
};

/** Said before any figure: what no single photograph can show. */
export const NEVER_SHOWN: readonly string[] = [
  'Whether the wall leans or bulges: a photograph is flat.',
  'Whether the mortar behind the face is full.',
  'Whether there are ties behind the bricks, and enough of them.',
  'What it rests on inside, and whether it moves.',
];
