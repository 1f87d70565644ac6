import type { Brief } from '../../../lib/generate/brief';
import { TOPICS } from '../../../lib/generate/topics';
import { RULE_SETS } from '../../../lib/limits/limit';
import { WALL_KINDS } from '../../../lib/wall/model';

/** A wall of each topic on each kind, of every difficulty and rule set in turn. */
export const WALLS: readonly Brief[] = TOPICS.flatMap((topic, t) =>
  WALL_KINDS.map((kind, k): Brief => {
    const number = t * WALL_KINDS.length + k;
    const rules = RULE_SETS[number % RULE_SETS.length] ?? 'canada';
    return { topic, kind, difficulty: 1 + (number % 5), rules, seed: 40_000 + number };
  }),
);
