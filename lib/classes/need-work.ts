import { topicOf } from '../generate/topics';
import type { SetWorkSpec } from './set-work';
import type { Need } from './statistics/teach-next';

/** Enough to meet the fault several times, and short enough for one sitting. Ours. */
const WALLS = 6;
/** So that a second and a third go with other walls cost nothing. */
const ATTEMPTS = 3;

/** What the group was last set: its rules, kinds of wall and difficulty are kept. */
export type LastSet = Pick<SetWorkSpec, 'rules' | 'kinds' | 'difficulty'>;

/** A set work that practises what a group needs: walls of the fault's topic, and of the other's where two are mixed up. */
export function workFor(need: Need, last: LastSet): SetWorkSpec {
  const faults = need.kind === 'swapped' ? [need.fault, need.saidToBe] : [need.fault];
  return {
    ...last,
    topics: [...new Set(faults.map(topicOf))],
    // What most missed is met plainer first; what was seen but named wrongly stays as hard as it was.
    difficulty: need.kind === 'missed' ? Math.max(1, last.difficulty - 1) : last.difficulty,
    walls: WALLS,
    sameForAll: false,
    offline: true,
    openingsUp: null,
    minutes: null,
    lessons: [],
    questionTopics: [],
    attempts: ATTEMPTS,
    passMark: null,
  };
}
