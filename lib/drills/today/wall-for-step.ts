import { type Brief, MAX_SEED } from '../../generate/brief';
import { plannedFaults } from '../../generate/engine';
import { codeOf } from '../../generate/wall-code';
import type { Draw, WallStep } from '../../learning/chooser';
import type { RuleSetId } from '../../limits/limit';
import { WALL_KINDS } from '../../wall/model';

/** Without it the wall is one of other units, so that it makes no pair. */
const MAKES_NO_PAIR = 'raked-thin-veneer';
/** Tries for all that is asked; then for a wall that is merely faulty, or sound. */
const TRIES = 400;

/**
 * The brief of a wall as the step asks for it, which was not read before. What is easy is first sought on a plain panel, where there is least
 * to look at. A rule set may not know the fault asked for: then the wall has another of its topic.
 */
export function wallForStep(step: WallStep, rules: RuleSetId, seen: ReadonlySet<string>, draw: Draw): Brief {
  let fallback: Brief | null = null;
  for (let tries = 0; tries < 2 * TRIES; tries++) {
    const isPlain = step.difficulty === 1 && tries < TRIES / 2;
    const kind = isPlain ? 'plain-panel' : WALL_KINDS[Math.floor(draw() * WALL_KINDS.length)];
    if (kind === undefined) throw new RangeError('a number drawn is from 0 to under 1');
    const { topic, difficulty } = step;
    const brief = { topic, kind, difficulty, rules, seed: Math.floor(draw() * (MAX_SEED + 1)) };
    const faults = plannedFaults(brief);
    if (faults.length > 0 === step.isSound || seen.has(codeOf(brief))) continue;
    if (step.kind !== 'full wall' && faults.includes(MAKES_NO_PAIR)) continue;
    // A plan is spoiled in its order: the first fault finds room for certain.
    const isAsked = step.fault === null || faults[0] === step.fault;
    if (step.isSound || (isAsked && (!step.hasSeveral || faults.length > 1))) return brief;
    fallback ??= brief;
    if (tries >= TRIES) break;
  }
  if (fallback === null) throw new RangeError(`no wall of ${step.topic} found in ${2 * TRIES} tries`);
  return fallback;
}
