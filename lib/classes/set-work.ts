import type { Brief } from '../generate/brief';

/** What a learner is asked to do, without names and dates: the same spec with the same secret asks the same walls. */
export interface SetWorkSpec {
  /** At least one; they take turns over the walls. */
  readonly topics: readonly Brief['topic'][];
  /** At least one; they take turns over the walls. */
  readonly kinds: readonly Brief['kind'][];
  /** How many walls, 1 to MOST_WALLS. */
  readonly walls: number;
  /** Declared difficulty, 1 to 5, of every wall. */
  readonly difficulty: number;
  readonly rules: Brief['rules'];
  /** True: everyone gets the same walls. False: a wall each, matched. */
  readonly sameForAll: boolean;
  /**
   * True: each wall goes to the device whole, so that the work goes on without a network; its measures can then be read out of the page.
   * False: the site draws what is looked at and answers each instrument.
   */
  readonly offline: boolean;
  /** Units a learner may lift off each wall; null: as many as the wall itself allows. */
  readonly openingsUp: number | null;
  /** Minutes from opening the work, before a learner's own time factor; null (the default): no time limit. */
  readonly minutes: number | null;
  /** Lessons to read first, by slug. */
  readonly lessons: readonly string[];
  /** Question sets that go with it, by topic. */
  readonly questionTopics: readonly string[];
  /** How often each learner may hand in, 1 to MOST_ATTEMPTS. Another attempt has other walls. */
  readonly attempts: number;
  readonly passMark: PassMark | null;
}

/** A pass mark has to say who set it, how and when: without that a line between pass and fail cannot be held up to daylight. */
export interface PassMark {
  /** Score needed, 0 to 1. */
  readonly share: number;
  readonly method: string;
  readonly person: string;
  /** Day it was set, YYYY-MM-DD. */
  readonly date: string;
}

/** Training defaults of ours: what fits one sitting and one printed bundle. */
export const MOST_WALLS = 30;
export const MOST_ATTEMPTS = 9;

export type Release = 'at once' | 'when due' | 'by hand';
export const RELEASES: readonly Release[] = ['at once', 'when due', 'by hand'];

/** Minutes a learner has, with their own time factor (percent; 150 is half as long again); null: no limit. */
export function minutesFor({ minutes }: Pick<SetWorkSpec, 'minutes'>, timeFactor: number): number | null {
  return minutes === null ? null : Math.ceil((minutes * timeFactor) / 100);
}
