import { layWall } from '../../lib/generate/generate';
import { TOPICS } from '../../lib/generate/topics';
import { inspect } from '../../lib/inspect/inspect';
import { RULE_SETS } from '../../lib/limits/limit';
import { WALL_KINDS } from '../../lib/wall/model';
import { fingerprintOf } from '../../lib/wall/print';

/** Fingerprints of a run of walls, each with its findings' measures; in any engine. */
export function hashWalls(from: number, to: number): readonly string[] {
  return Array.from({ length: to - from }, (_, index) => {
    const n = from + index;
    const rules = at(RULE_SETS, Math.floor(n / 32));
    const wall = layWall({
      topic: at(TOPICS, n),
      kind: at(WALL_KINDS, Math.floor(n / 8)),
      difficulty: 1 + (n % 5),
      rules,
      seed: n * 65_537,
    });
    const key = inspect(wall, rules).map(({ check, measured, limit }) => `${check} ${measured} ${limit}`);
    return [fingerprintOf(wall), ...key].join('; ');
  });
}

function at<T>(list: readonly T[], index: number): T {
  const found = list[index % list.length];
  if (found === undefined) throw new RangeError('empty list');
  return found;
}
