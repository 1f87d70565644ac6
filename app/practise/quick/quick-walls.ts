import { type Brief, MAX_SEED } from '../../../lib/generate/brief';
import { layPlan } from '../../../lib/generate/generate';
import type { Plan } from '../../../lib/generate/plan';
import { planOf } from '../../../lib/generate/planner';
import type { Topic } from '../../../lib/generate/topics';
import type { CheckId } from '../../../lib/inspect/finding';
import type { RuleSetId } from '../../../lib/limits/limit';
import { askOf } from '../../../lib/practice/quick-round';
import type { Wall, WallKind } from '../../../lib/wall/model';
import { surveyOf } from '../../../lib/wall/survey';

/**
 * The faults that show from in front at a distance, and so the only ones in a quick look. Measured on 2026-11-25: the whole wall drawn
 * 358 px wide with the fault and without, eight walls a fault at the easiest level. These change from 32 (a proud unit) to thousands
 * of pixels by more than 40 of 255 steps of a colour, at the place of the fault and on every wall; a thick or thin joint only where
 * it is a whole bed (198 and more; a head joint 0 to 12). Left out: what changes fewer (a twisted unit, a taper, a sliver, an open
 * head: 0 to 24), and what moves the whole wall a little, where the eye has nothing to hold it against (level, gauge, perpends).
 */
export const SEEN_FROM_AFAR: readonly CheckId[] = [
  'proud-unit',
  'bulge-or-hollow',
  'no-bearing-return',
  'thick-joint',
  'thin-joint',
];

/** Topics and kinds of wall the faults above come on. A sound wall is drawn from the same list, so that the kind gives nothing away. */
const SORTS: readonly (readonly [Topic, WallKind])[] = [
  ['line', 'plain-panel'],
  ['joints', 'plain-panel'],
  ['support', 'plain-panel'],
  ['line', 'window-panel'],
  ['joints', 'window-panel'],
  ['support', 'window-panel'],
  ['line', 'gable-end'],
];

/** The brief of one wall of a round: the first from the seed asked for that is as sound or as faulty as asked. */
export function quickBrief(rules: RuleSetId, round: number, place: number): Brief {
  const ask = askOf(round, place, MAX_SEED);
  const [topic, kind] = SORTS[ask.draw % SORTS.length] ?? ['line', 'plain-panel'];
  for (let seed = ask.seed; ; seed = seed === MAX_SEED ? 0 : seed + 1) {
    const brief: Brief = { topic, kind, difficulty: 1, rules, seed };
    if (fits(planOf(brief), ask.faulty)) return brief;
  }
}

function fits(plan: Plan, faulty: boolean): boolean {
  const faults = plan.spoils.map(({ fault }) => fault);
  if (!faulty) return faults.length === 0;
  if (faults.length === 0 || !faults.every((fault) => SEEN_FROM_AFAR.includes(fault))) return false;
  const ofJoint = faults.includes('thick-joint') || faults.includes('thin-joint');
  return !ofJoint || hasOddBed(layPlan(plan));
}

/** A bed that is off the others by this much along a whole course is a spoiled one, mm: natural scatter is under 1. */
const ODD = 3;

function hasOddBed(wall: Wall): boolean {
  const design = wall.gauge - wall.family.height;
  return surveyOf(wall).panels.some(({ courses }) =>
    courses
      .slice(1)
      .some((course) =>
        course.every(({ bed }) => bed !== null && Math.abs((bed.left + bed.right) / 2 - design) > ODD),
      ),
  );
}
