import type { CheckId } from '../inspect/finding';

/** What a wall is about: the lesson it goes with. `mixed` draws from all that a wall of its masonry can show. */
export const TOPICS = [
  'back-mortar',
  'joints',
  'line',
  'bond',
  'support',
  'ties',
  'water',
  'mortar',
  'mixed',
] as const;
export type Topic = (typeof TOPICS)[number];

/** By their place in a wall code: one that comes later stands at the end. */
export const TOPICS_BY_CODE: readonly Topic[] = [
  'back-mortar',
  'joints',
  'line',
  'bond',
  'support',
  'ties',
  'mortar',
  'mixed',
  'water',
];

/** The first engine that lays walls of a topic. */
export function engineOfTopic(topic: Topic): number {
  return topic === 'water' ? 6 : 1;
}

export const TOPIC_TITLES: Readonly<Record<Topic, string>> = {
  'back-mortar': 'Back-buttering and contact',
  joints: 'Full and even joints',
  line: 'Line, level, plumb and gauge',
  bond: 'Setting out and bond',
  support: 'What carries the wall',
  ties: 'Ties',
  water: 'Flashing and weeps',
  mortar: 'Mortar',
  mixed: 'A bit of everything',
};

const BACKS: readonly CheckId[] = ['missing-back-mortar', 'ring-buttered-back'];
const JOINTS: readonly CheckId[] = [
  'tapering-bed',
  'thick-joint',
  'thin-joint',
  'open-head',
  'raked-thin-veneer',
];
const LINE: readonly CheckId[] = [
  'course-off-level',
  'gauge-drift',
  'perpend-drift',
  'bulge-or-hollow',
  'out-of-plumb',
  'twisted-unit',
  'proud-unit',
  'corner-not-square',
];
const BOND: readonly CheckId[] = ['sliver-piece', 'perpend-drift', 'thin-joint'];
const SUPPORT: readonly CheckId[] = [
  'overhang-too-far',
  'no-bearing-return',
  'short-lintel-bearing',
  'no-lintel',
  'weak-angle',
];
const TIES: readonly CheckId[] = [
  'ties-too-far-apart',
  'no-tie-at-edge',
  'shallow-tie',
  'tie-near-face',
  'thin-tie',
];
const WATER: readonly CheckId[] = [
  'weeps-too-far-apart',
  'blocked-weep',
  'no-flashing',
  'low-flashing',
  'short-flashing',
  'no-end-dam',
];
const MORTAR: readonly CheckId[] = ['stale-mortar', 'lean-mortar'];

/** The faults a wall of a topic may hold. */
export const TOPIC_FAULTS: Readonly<Record<Topic, readonly CheckId[]>> = {
  'back-mortar': BACKS,
  joints: JOINTS,
  line: LINE,
  bond: BOND,
  support: SUPPORT,
  ties: TIES,
  water: WATER,
  mortar: MORTAR,
  mixed: [...BACKS, ...JOINTS, ...LINE, 'sliver-piece', ...SUPPORT, ...TIES, ...WATER, ...MORTAR],
};

/** The family of a fault: the first topic, in the order of the lessons, that has it. */
export function topicOf(fault: string): Topic {
  return TOPICS.find((topic) => TOPIC_FAULTS[topic].some((each) => each === fault)) ?? 'mixed';
}
