import { layByCode } from '../engines/engines';
import { type Brief, MAX_SEED } from '../generate/brief';
import type { Topic } from '../generate/topics';
import { codeOf } from '../generate/wall-code';
import type { RuleSetId } from '../limits/limit';
import { ruleSetTitle } from '../limits/limits';
import type { SentLook } from '../site-drawn/sent-look';
import type { SiteWall } from '../site-drawn/site-wall';
import type { Wall } from '../wall/model';

/** What a wall page is given. Plain data: the server lays the wall, by whatever engine its code names, and the browser need not fetch what lays walls. */
export interface WallToRead {
  readonly code: string;
  readonly wall: Wall;
  readonly topic: Topic;
  readonly difficulty: number;
  readonly rules: RuleSetId;
  readonly rulesTitle: string;
  /** Where the site draws the wall: its first look. The wall is then a bare one, whose measures say nothing. */
  readonly look?: SentLook;
  /** Address of the next wall of the same brief. */
  readonly nextHref: string;
}

export function wallToRead(brief: Brief, wall = layByCode(brief).wall): WallToRead {
  return {
    code: codeOf(brief),
    wall,
    topic: brief.topic,
    difficulty: brief.difficulty,
    rules: brief.rules,
    rulesTitle: ruleSetTitle(brief.rules),
    nextHref: `/walls/${nextCode(brief)}`,
  };
}

/** A wall of set work, without its code: whoever has the code can open the wall by itself, and see its key. */
export function layForSetWork(brief: Brief, wall = layByCode(brief).wall): WallToRead {
  return { ...wallToRead(brief, wall), code: '', nextHref: '' };
}

/**
 * A wall of set work that the site draws: the bare wall and the look from in front. Its topic stays hidden too, since it says which faults
 * there can be.
 */
export function layToDraw(brief: Brief, { bare }: SiteWall, look: SentLook): WallToRead {
  return {
    code: '',
    wall: bare.wall,
    topic: 'mixed',
    difficulty: brief.difficulty,
    rules: brief.rules,
    rulesTitle: ruleSetTitle(brief.rules),
    nextHref: '',
    look,
  };
}

/** The code of the next wall of the same kind: the seed after this one, laid by today's engine. */
function nextCode({ engine: _, ...brief }: Brief): string {
  return codeOf({ ...brief, seed: brief.seed === MAX_SEED ? 0 : brief.seed + 1 });
}
