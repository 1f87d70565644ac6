import type { LookAlike } from '../../lib/generate/look-alikes/look-alike';
import type { Spoil } from '../../lib/generate/plan';
import type { Topic } from '../../lib/generate/topics';
import { BLEMISHES } from '../../lib/inspect/blemishes';
import type { Condition, WallKind } from '../../lib/wall/model';
import type { PartKind } from '../../lib/wall/part-id';

export type Blemish = Exclude<Condition, 'sound'>;

/** Walls of one lesson: laid from one seed, once sound and once spoiled, and the topic to practise on after it. */
export interface LessonFamily {
  readonly topic: Topic;
  readonly kind: WallKind;
  readonly masonry: 'anchored' | 'adhered';
  readonly seed: number;
  readonly spoils: readonly Spoil[];
  readonly lookAlikes: readonly LookAlike[];
  /** What is ringed on the sound wall: a part, or a unit with a mark; and what is to be said of it. No figures. */
  readonly good: readonly (readonly [part: PartKind | Blemish, says: string])[];
  /** Marks put by hand on the faces of units. */
  readonly marks?: Readonly<Record<string, Blemish>>;
}

const spoil = (fault: Spoil['fault'], severity: number): Spoil => ({ fault, severity });
const laid = { masonry: 'anchored', lookAlikes: [] } as const;

/** "Stains running down: a symptom. Water runs here." */
function told(mark: Blemish): readonly [Blemish, string] {
  const { name, tells, means } = BLEMISHES[mark];
  return [mark, `${name}: ${tells}. ${means}`];
}

const EVEN_BED = ['bed', 'A bed joint: full, and the same from end to end.'] as const;
const FULL_HEAD = ['head', 'A head joint: filled from the face to the back.'] as const;

export const LESSON_FAMILIES = {
  'first-look': {
    ...laid,
    topic: 'mixed',
    kind: 'window-panel',
    seed: 8,
    spoils: [spoil('short-lintel-bearing', 2.5), spoil('thick-joint', 2), spoil('sliver-piece', 2)],
    good: [
      ['course', 'A course: it runs level from end to end.'],
      ['opening', 'The opening: something carries the wall over it.'],
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
    good: [['unit', 'From in front the units tell nothing of the mortar behind them.'], EVEN_BED],
  },
  'ring-back': {
    topic: 'back-mortar',
    kind: 'plain-panel',
    masonry: 'adhered',
    seed: 22,
    lookAlikes: [],
    spoils: [spoil('ring-buttered-back', 4)],
    good: [['unit', 'From in front the units tell nothing of the mortar behind them.'], EVEN_BED],
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
      ['course', 'A course: both its ends are at one height.'],
      ['unit', 'A unit: flush with those around it. It throws no shadow.'],
    ],
  },
  'twisted-line': {
    ...laid,
    topic: 'line',
    kind: 'plain-panel',
    seed: 42,
    spoils: [spoil('proud-unit', 3.5), spoil('twisted-unit', 3)],
    good: [['unit', 'A unit: flush with those around it. It throws no shadow.']],
  },
  slivers: {
    ...laid,
    topic: 'bond',
    kind: 'window-panel',
    seed: 51,
    spoils: [spoil('sliver-piece', 2.5)],
    good: [
      ['head', 'A head joint: it stands over the middle part of the unit below.'],
      ['opening', 'The jambs: halves and whole units in turn, nothing smaller.'],
    ],
  },
  ledge: {
    ...laid,
    topic: 'support',
    kind: 'plain-panel',
    seed: 61,
    spoils: [spoil('overhang-too-far', 1.6)],
    good: [['support', 'The ledge: it runs under the whole of the first course.']],
  },
  'no-ledge': {
    ...laid,
    topic: 'support',
    kind: 'gable-end',
    seed: 62,
    spoils: [spoil('no-bearing-return', 1.5)],
    good: [['support', 'The ledge: it runs under the whole of the first course.']],
  },
  lintel: {
    ...laid,
    topic: 'support',
    kind: 'window-panel',
    seed: 71,
    spoils: [spoil('short-lintel-bearing', 2.5)],
    good: [['opening', 'The opening: its steel reaches well past both sides.']],
  },
  'missing-lintel': {
    ...laid,
    topic: 'support',
    kind: 'window-panel',
    seed: 72,
    spoils: [spoil('no-lintel', 1.5)],
    good: [['opening', 'The opening: its steel reaches well past both sides.']],
  },
  ties: {
    ...laid,
    topic: 'ties',
    kind: 'window-panel',
    seed: 81,
    spoils: [spoil('ties-too-far-apart', 2)],
    good: [
      ['tie', 'A tie: fixed to a stud, in a steady pattern.'],
      ['opening', 'The opening: ties run up both sides of it.'],
    ],
  },
  'short-ties': {
    ...laid,
    topic: 'ties',
    kind: 'plain-panel',
    seed: 82,
    spoils: [spoil('no-tie-at-edge', 2), spoil('thin-tie', 1.6)],
    good: [['tie', 'A tie: fixed to a stud, in a steady pattern.']],
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
    good: [FULL_HEAD, ['opening', 'The opening: small slots over it let water out.']],
  },
  surface: {
    topic: 'mixed',
    kind: 'plain-panel',
    masonry: 'anchored',
    seed: 111,
    lookAlikes: ['hairline-cracks', 'efflorescence'],
    spoils: [spoil('bulge-or-hollow', 2.5)],
    good: [['course', 'A course: straight, and level from end to end.'], EVEN_BED],
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
      ['tie', 'A tie: you can see it, count it and measure to it.'],
      ['opening', 'The opening: ties run up its sides.'],
    ],
  },
} as const satisfies Readonly<Record<string, LessonFamily>>;

export type FamilyName = keyof typeof LESSON_FAMILIES;

export function isFamily(name: string): name is FamilyName {
  return Object.hasOwn(LESSON_FAMILIES, name);
}
