import type { Spoil } from '../../lib/generate/plan';
import { BLEMISHES } from '../../lib/inspect/blemishes';
import type { Blemish, LessonFamily } from './lesson-family';

const spoil = (fault: Spoil['fault'], severity: number): Spoil => ({ fault, severity });
const laid = { masonry: 'anchored', lookAlikes: [] } as const;

/** "Stains running down: a symptom. Water runs here." */
function told(mark: Blemish): readonly [Blemish, string] {
  const { name, tells, means } = BLEMISHES[mark];
  return [mark, `${name}: ${tells}. ${means}`];
}

const EVEN_BED = ['bed', 'This bed joint is full, and just as thick at one end as at the other.'] as const;
const FULL_HEAD = ['head', 'This head joint is filled from the face all the way to the back.'] as const;

export const LESSON_FAMILIES = {
  'first-look': {
    ...laid,
    topic: 'mixed',
    kind: 'window-panel',
    seed: 8,
    spoils: [spoil('short-lintel-bearing', 2.5), spoil('thick-joint', 2), spoil('sliver-piece', 2)],
    good: [
      ['course', 'This course runs level from one end to the other.'],
      ['opening', 'Something carries the wall over this opening.'],
      EVEN_BED,
    ],
  },
  'bare-back': {
    topic: 'back-mortar',
    kind: 'plain-panel',
    masonry: 'adhered',
    seed: 21,
    lookAlikes: [],
    spoils: [spoil('missing-back-mortar', 4)],
    good: [['unit', 'From the front, the units tell you nothing about the mortar behind them.'], EVEN_BED],
  },
  'ring-back': {
    topic: 'back-mortar',
    kind: 'plain-panel',
    masonry: 'adhered',
    seed: 22,
    lookAlikes: [],
    spoils: [spoil('ring-buttered-back', 4)],
    good: [['unit', 'From the front, the units tell you nothing about the mortar behind them.'], EVEN_BED],
  },
  'open-joints': {
    ...laid,
    topic: 'joints',
    kind: 'plain-panel',
    seed: 31,
    spoils: [spoil('open-head', 2.5), spoil('tapering-bed', 2.5)],
    good: [EVEN_BED, FULL_HEAD],
  },
  'uneven-joints': {
    ...laid,
    topic: 'joints',
    kind: 'plain-panel',
    seed: 32,
    spoils: [spoil('tapering-bed', 3)],
    good: [EVEN_BED, FULL_HEAD],
  },
  'off-line': {
    ...laid,
    topic: 'line',
    kind: 'plain-panel',
    seed: 41,
    spoils: [spoil('course-off-level', 2.5)],
    good: [
      ['course', 'Both ends of this course are at the same height.'],
      ['unit', 'This unit lies flush with the ones around it, so it throws no shadow.'],
    ],
  },
  'twisted-line': {
    ...laid,
    topic: 'line',
    kind: 'plain-panel',
    seed: 42,
    spoils: [spoil('proud-unit', 3.5), spoil('twisted-unit', 3)],
    good: [['unit', 'This unit lies flush with the ones around it, so it throws no shadow.']],
  },
  slivers: {
    ...laid,
    topic: 'bond',
    kind: 'window-panel',
    seed: 51,
    spoils: [spoil('sliver-piece', 2.5)],
    good: [
      ['head', 'This head joint stands over the middle of the unit below it.'],
      ['opening', 'Halves and whole units alternate at the jambs, with nothing smaller.'],
    ],
  },
  ledge: {
    ...laid,
    topic: 'support',
    kind: 'plain-panel',
    seed: 61,
    spoils: [spoil('overhang-too-far', 1.6)],
    good: [['support', 'The ledge runs under the whole of the first course.']],
  },
  'no-ledge': {
    ...laid,
    topic: 'support',
    kind: 'gable-end',
    seed: 62,
    spoils: [spoil('no-bearing-return', 1.5)],
    good: [['support', 'The ledge runs under the whole of the first course.']],
  },
  lintel: {
    ...laid,
    topic: 'support',
    kind: 'window-panel',
    seed: 71,
    spoils: [spoil('short-lintel-bearing', 2.5)],
    good: [['opening', 'The steel over this opening reaches well past both sides of it.']],
  },
  'missing-lintel': {
    ...laid,
    topic: 'support',
    kind: 'window-panel',
    seed: 72,
    spoils: [spoil('no-lintel', 1.5)],
    good: [['opening', 'The steel over this opening reaches well past both sides of it.']],
  },
  ties: {
    ...laid,
    topic: 'ties',
    kind: 'window-panel',
    seed: 81,
    spoils: [spoil('ties-too-far-apart', 2)],
    good: [
      ['tie', 'This tie is fixed to a stud, and the ties make a steady pattern.'],
      ['opening', 'Ties run up both sides of this opening.'],
    ],
  },
  'short-ties': {
    ...laid,
    topic: 'ties',
    kind: 'plain-panel',
    seed: 82,
    spoils: [spoil('no-tie-at-edge', 2), spoil('thin-tie', 1.6)],
    good: [['tie', 'This tie is fixed to a stud, and the ties make a steady pattern.']],
  },
  mortar: {
    ...laid,
    topic: 'mortar',
    kind: 'plain-panel',
    seed: 91,
    spoils: [spoil('lean-mortar', 2)],
    good: [EVEN_BED, FULL_HEAD],
  },
  weeps: {
    topic: 'joints',
    kind: 'window-panel',
    masonry: 'anchored',
    seed: 101,
    lookAlikes: ['weep-openings'],
    spoils: [spoil('open-head', 2.5)],
    good: [FULL_HEAD, ['opening', 'Small slots over this opening let the water out.']],
  },
  'low-flashing': {
    ...laid,
    topic: 'water',
    kind: 'plain-panel',
    seed: 102,
    spoils: [spoil('low-flashing', 2.5)],
    good: [
      ['support', 'A flashing lies on this ledge. It goes up behind the brick and comes out past the edge.'],
    ],
  },
  surface: {
    topic: 'mixed',
    kind: 'plain-panel',
    masonry: 'anchored',
    seed: 111,
    lookAlikes: ['hairline-cracks', 'efflorescence'],
    spoils: [spoil('bulge-or-hollow', 2.5)],
    good: [['course', 'This course is straight, and level from one end to the other.'], EVEN_BED],
  },
  'marks-to-leave': {
    ...laid,
    topic: 'mixed',
    kind: 'plain-panel',
    seed: 112,
    spoils: [],
    marks: { 'A16.5': 'smear', 'A18.6': 'chip', 'A17.4': 'hairline', 'A14.6': 'bloom' },
    good: [told('smear'), told('chip'), told('hairline'), told('bloom')],
  },
  'marks-to-follow': {
    ...laid,
    topic: 'mixed',
    kind: 'plain-panel',
    seed: 112,
    spoils: [],
    marks: { 'A16.5': 'flake', 'A18.4': 'stain', 'A17.4': 'stain', 'A14.5': 'crumbling', 'A18.6': 'flake' },
    good: [told('flake'), told('stain'), told('crumbling')],
  },
  'before-cover': {
    ...laid,
    topic: 'ties',
    kind: 'door-corner',
    seed: 121,
    spoils: [spoil('no-tie-at-edge', 2)],
    good: [
      ['tie', 'You can see this tie, count it and measure to it.'],
      ['opening', 'Ties run up the sides of this opening.'],
    ],
  },
  // For the household: a gable with a fault to be seen from far off, and one sound wall with the names of its parts.
  gable: {
    ...laid,
    topic: 'mixed',
    kind: 'gable-end',
    seed: 131,
    spoils: [spoil('course-off-level', 2.5)],
    good: [['course', 'A course: both its ends are at one height.']],
  },
  'whole-wall': {
    topic: 'mixed',
    kind: 'window-panel',
    masonry: 'anchored',
    seed: 141,
    lookAlikes: ['weep-openings'],
    spoils: [],
    good: [
      ['course', 'A row of bricks, which masons call a course. It runs level from end to end.'],
      ['bed', 'The mortar under a brick: full, and as thick at one end as at the other.'],
      ['head', 'The mortar between two bricks: filled right to the back.'],
      ['opening', 'The window. Steel over it carries the bricks and reaches well past both sides.'],
      ['support', 'The base. It stands under the whole of the lowest row.'],
    ],
  },
} as const satisfies Readonly<Record<string, LessonFamily>>;

export type FamilyName = keyof typeof LESSON_FAMILIES;

export function isFamily(name: string): name is FamilyName {
  return Object.hasOwn(LESSON_FAMILIES, name);
}
