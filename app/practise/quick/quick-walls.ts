import { type Brief, MAX_SEED } from '../../../lib/generate/brief';
import { planOf } from '../../../lib/generate/planner';
import type { Topic } from '../../../lib/generate/topics';
import type { CheckId } from '../../../lib/inspect/finding';
import type { RuleSetId } from '../../../lib/limits/limit';
import { askOf } from '../../../lib/practice/quick-round';
import type { WallKind } from '../../../lib/wall/model';

/**
 * The faults that show from in front at a distance, and so the only ones in a quick look. Measured on 2026-11-25: the whole wall drawn
 * 358 px wide with the fault and without, eight walls a fault at the easiest level; these change at least 30 pixels by more than 40 of
 * 255 steps of a colour on every one of them, most of them hundreds. All others change fewer than 30 on some.
 */
export const SEEN_FROM_AFAR: readonly CheckId[] = [
  'proud-unit',
  'perpend-drift',
  'bulge-or-hollow',
  'course-off-level',
  'no-bearing-return',
];

/** Topics and kinds of wall the faults above come on. A sound wall is drawn from the same list, so that the kind gives nothing away. */
const SORTS: readonly (readonly [Topic, WallKind])[] = [
  ['line', 'plain-panel'],
  ['line', 'gable-end'],
  ['support', 'plain-panel'],
  ['line', 'window-panel'],
  ['line', 'plain-panel'],
  ['support', 'window-panel'],
];

/** The brief of one wall of a round: the first from the seed asked for that is as sound or as faulty as asked. */
export function quickBrief(rules: RuleSetId, round: number, place: number): Brief {
  const ask = askOf(round, place, MAX_SEED);
  const [topic, kind] = SORTS[ask.draw % SORTS.length] ?? ['line', 'plain-panel'];
  for (let seed = ask.seed; ; seed = seed === MAX_SEED ? 0 : seed + 1) {
    const brief: Brief = { topic, kind, difficulty: 1, rules, seed };
    const { spoils } = planOf(brief);
    const seen = spoils.every(({ fault }) => SEEN_FROM_AFAR.includes(fault));
    if (seen && spoils.length > 0 === ask.faulty) return brief;
  }
}
