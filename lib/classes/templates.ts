import type { Release, SetWorkSpec } from './set-work';

/** A set work to start from. Every field can be changed after. */
export interface Template {
  readonly id: string;
  readonly title: string;
  /** One sentence: when to use it. */
  readonly use: string;
  readonly spec: SetWorkSpec;
  readonly release: Release;
  /** Days from opening until it is due. */
  readonly days: number;
}

const PLAIN = {
  rules: 'canada',
  openingsUp: null,
  minutes: null,
  passMark: null,
} as const;

/** Our own defaults, from no standard. */
export const TEMPLATES: readonly Template[] = [
  {
    id: 'first-lesson',
    title: 'First lesson',
    use: 'Three easy walls, the same for all, with two lessons to read first. Results show at once.',
    spec: {
      ...PLAIN,
      topics: ['joints'],
      kinds: ['plain-panel'],
      walls: 3,
      difficulty: 1,
      sameForAll: true,
      offline: true,
      lessons: ['how-to-read-a-wall', 'full-joints'],
      questionTopics: ['reading', 'joints'],
      attempts: 3,
    },
    release: 'at once',
    days: 7,
  },
  {
    id: 'warm-up',
    title: 'Warm-up',
    use: 'Two walls each, on a bit of everything, for the first ten minutes of a day. Results show at once.',
    spec: {
      ...PLAIN,
      topics: ['mixed'],
      kinds: ['plain-panel', 'window-panel'],
      walls: 2,
      difficulty: 2,
      sameForAll: false,
      offline: true,
      lessons: [],
      questionTopics: [],
      attempts: 1,
    },
    release: 'at once',
    days: 1,
  },
  {
    id: 'fair-test',
    title: 'Fair test',
    use: 'Twelve walls each: every learner gets walls of their own, matched by how plain their faults are. Results show when it is due.',
    spec: {
      ...PLAIN,
      topics: ['mixed'],
      kinds: ['plain-panel', 'window-panel', 'door-corner', 'gable-end'],
      walls: 12,
      difficulty: 3,
      sameForAll: false,
      offline: false,
      lessons: [],
      questionTopics: [],
      attempts: 1,
    },
    release: 'when due',
    days: 7,
  },
];

/** The template of an id; the first one where there is none of that name. */
export function templateOf(id: string | undefined): Template {
  return TEMPLATES.find((each) => each.id === id) ?? (TEMPLATES[0] as Template);
}
