import { DIFFICULTIES } from '../generate/brief';
import { TOPICS } from '../generate/topics';
import { hasFields, isRecord, readJson } from '../json/read-json';
import { RULE_SETS } from '../limits/limit';
import { isLook } from '../site-drawn/sent-look';
import { WALL_VERSION, type Wall } from '../wall/model';
import type { WallToRead } from './wall-to-read';

const LISTS = [
  'panels',
  'units',
  'heads',
  'openings',
  'supports',
  'ties',
  'flashings',
  'batches',
  'projections',
] as const satisfies readonly (keyof Wall)[];

const HARDEST = Math.max(...DIFFICULTIES);

/** Reads a wall the site sent. @throws where it is anything else, such as the answer of a network that wants one to sign in first. */
export function parseLaid(text: string): WallToRead {
  const loose = readJson(text);
  const isLaid = hasFields(loose, { code: 'string', rulesTitle: 'string', nextHref: 'string' });
  if (!isLaid || !isWall(loose.wall)) throw new TypeError('this is no wall of the site');
  const { code, wall, rulesTitle, nextHref } = loose;
  const topic = TOPICS.find((each) => each === loose.topic);
  const rules = RULE_SETS.find((each) => each === loose.rules);
  if (topic === undefined || rules === undefined) throw new TypeError('this wall has no topic or no rules');
  // A wall kept on a device since before it was sent has none: nobody is then told where to begin.
  const difficulty = typeof loose.difficulty === 'number' ? loose.difficulty : HARDEST;
  const laid = { code, wall, topic, difficulty, rules, rulesTitle, nextHref };
  return isLook(loose.look) ? { ...laid, look: loose.look } : laid;
}

/** Its lists are not gone through: the site laid it, and a fingerprint goes with it. */
function isWall(value: unknown): value is Wall {
  return (
    isRecord(value) && value.version === WALL_VERSION && LISTS.every((list) => Array.isArray(value[list]))
  );
}
