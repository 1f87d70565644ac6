import type { LimitTopic } from '../limits/limit';

/** What a set of questions is about, in the order of the lessons. */
export const QUESTION_TOPICS = [
  'reading',
  'back-buttering',
  'joints',
  'line',
  'bond',
  'support',
  'openings',
  'ties',
  'mortar',
  'water',
  'cracks',
  'hold-points',
] as const;
export type QuestionTopic = (typeof QUESTION_TOPICS)[number];

export const QUESTION_TOPIC_TITLES: Readonly<Record<QuestionTopic, string>> = {
  reading: 'How to read a wall',
  'back-buttering': 'Back-buttering and contact',
  joints: 'Full and even joints',
  line: 'Line, gauge, level and plumb',
  bond: 'Setting out and bond',
  support: 'Support and overhang',
  openings: 'Openings and lintels',
  ties: 'Ties',
  mortar: 'Mortar',
  water: 'Keeping water out',
  cracks: 'Cracks and making safe',
  'hold-points': 'Hold points',
};

/** Which limits a topic may ask the kind of. */
export const LIMITS_OF_TOPIC: Readonly<Record<QuestionTopic, readonly LimitTopic[]>> = {
  reading: ['judging the face', 'joints', 'support', 'line', 'bond'],
  'back-buttering': ['back mortar'],
  joints: ['joints'],
  line: ['line'],
  bond: ['bond'],
  support: ['support'],
  openings: ['openings'],
  ties: ['ties'],
  mortar: ['mortar', 'weather'],
  water: ['water'],
  cracks: ['judging the face', 'movement', 'keeping people away'],
  'hold-points': ['ties', 'support', 'openings', 'water'],
};
