import { layByCode, layWithoutFaults } from '../../engines/engines';
import type { Brief } from '../../generate/brief';
import { inspect } from '../../inspect/inspect';
import type { RuleSetId } from '../../limits/limit';
import type { Wall } from '../../wall/model';
import { firstMeasured } from '../faulty-brief';
import { hash32 } from '../hash';

/** The same wall twice: as laid, and as spoiled. */
export interface Pair {
  readonly brief: Brief;
  readonly sound: Wall;
  readonly spoiled: Wall;
  /** Which of the two walls shown is spoiled. */
  readonly spoiledIs: 1 | 2;
}

/** The first pair from this brief on, seed by seed, of which one wall is measured to be sound and the other not. */
export function measuredPair(asked: Brief): Pair {
  return firstMeasured(asked, [], (brief) => {
    const [first, second] = layTwice(brief);
    const spoiledIs = spoiledOf(first, second, brief.rules);
    if (spoiledIs === null) return null;
    return spoiledIs === 1
      ? { brief, sound: second, spoiled: first, spoiledIs }
      : { brief, sound: first, spoiled: second, spoiledIs };
  });
}

/** Which of two walls has a finding where the other has none; null where both have, or neither. */
export function spoiledOf(first: Wall, second: Wall, rules: RuleSetId): 1 | 2 | null {
  const isSpoiled = inspect(first, rules).length > 0;
  if (isSpoiled === inspect(second, rules).length > 0) return null;
  return isSpoiled ? 1 : 2;
}

/** Both walls of one plan by the same chance, one of them without its faults, in the order in which they are shown. */
function layTwice(brief: Brief): readonly [Wall, Wall] {
  const without = layWithoutFaults(brief);
  const withThem = layByCode(brief).wall;
  return hash32(brief.seed, 0) % 2 === 0 ? [withThem, without] : [without, withThem];
}
