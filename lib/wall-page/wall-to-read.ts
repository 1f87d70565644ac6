import { layByCode } from '../engines/engines';
import { type Brief, MAX_SEED } from '../generate/brief';
import type { Topic } from '../generate/topics';
import { codeOf } from '../generate/wall-code';
import type { RuleSetId } from '../limits/limit';
import { ruleSetTitle } from '../limits/limits';
import type { Wall } from '../wall/model';

/** What a wall page is given. Plain data: the server lays the wall, by whatever engine its code names, and the browser need not fetch what lays walls. */
export interface WallToRead {
  readonly code: string;
  readonly wall: Wall;
  readonly topic: Topic;
  readonly difficulty: number;
  readonly rules: RuleSetId;
  readonly rulesTitle: string;
  /** Address of the next wall of the same brief. */
  readonly nextHref: string;
}

export function wallToRead(brief: Brief): WallToRead {
  return {
    code: codeOf(brief),
    wall: layByCode(brief).wall,
    topic: brief.topic,
    difficulty: brief.difficulty,
    rules: brief.rules,
    rulesTitle: ruleSetTitle(brief.rules),
    nextHref: `/walls/${nextCode(brief)}`,
  };
}

/** A wall of set work, without its code: whoever has the code can open the wall by itself, and see its key. */
export function layForSetWork(brief: Brief): WallToRead {
  return { ...wallToRead(brief), code: '', nextHref: '' };
}

/** The code of the next wall of the same kind: the seed after this one, laid by today's engine. */
function nextCode({ engine: _, ...brief }: Brief): string {
  return codeOf({ ...brief, seed: brief.seed === MAX_SEED ? 0 : brief.seed + 1 });
}
