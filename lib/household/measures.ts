import { boundAt, departureBound, governingOverhang } from '../limits/bound';
import type { Limit, RuleSetId } from '../limits/limit';
import { limitOf, limitsUnder, namedLimitOf } from '../limits/limits';
import type { Mm } from '../units';
import { BATTEN } from './lengths';
import { type Answers, isMeasure, type MeasureId, type QuestionId } from './stops';

/** What a measured length is held against. */
export interface Held {
  readonly limit: Limit;
  readonly bound: Mm;
  readonly end: 'at most' | 'at least';
  /** What has to be said beside the figure, such as what was taken for granted because it was not measured. */
  readonly given?: string;
}

/** What a table of decisions reads: a word, or how a length stands to its limit. */
export type State =
  | 'yes'
  | 'no'
  | 'cannot see'
  | 'do not know'
  | 'not answered'
  | 'within'
  | 'beyond'
  | 'no figure';

/** Where nobody measured the brick: the thinnest that the rules let stand on a ledge, which may stand out least. */
function thinnest(rules: RuleSetId): Mm {
  const limit = namedLimitOf(rules, 'veneer-thickness') ?? namedLimitOf('canada', 'veneer-thickness');
  if (limit === undefined) throw new RangeError('canada: no limit veneer-thickness');
  return boundAt(limit, {});
}

/** The limit of a measured length under a rule set, or undefined where no rule set has one. */
export function heldTo(id: MeasureId, rules: RuleSetId, answers: Answers): Held | undefined {
  switch (id) {
    case 'crack-width': {
      const held = plain(namedLimitOf(rules, 'crack-width'), 'at most');
      return held && { ...held, given: 'No width makes a crack safe.' };
    }
    case 'joint-width':
      return plain(limitOf(rules, 'head-joint-most'), 'at most');
    case 'slot-spacing':
      return plain(namedLimitOf(rules, 'weep-spacing'), 'at most');
    case 'clearance':
      return plain(
        namedLimitOf(rules, 'dpc-height') ?? namedLimitOf(rules, 'base-flashing-height'),
        'at least',
      );
    case 'batten-gap': {
      const limit = limitOf(rules, 'face-line');
      return limit && { limit, bound: departureBound(limit.bound, BATTEN), end: 'at most' };
    }
    case 'bearing': {
      const limit = limitOf(rules, 'lintel-bearing');
      const span = lengthOf(answers['opening-width']) ?? Number.POSITIVE_INFINITY;
      return limit && { limit, bound: boundAt(limit, { span }), end: 'at least' };
    }
    case 'overhang':
      return overhang(rules, lengthOf(answers['brick-depth']));
    default:
      return undefined;
  }
}

function plain(limit: Limit | undefined, end: Held['end']): Held | undefined {
  return limit && { limit, bound: boundAt(limit, {}), end };
}

function overhang(rules: RuleSetId, measured: Mm | undefined): Held | undefined {
  const depth = measured ?? thinnest(rules);
  const governing = governingOverhang(limitsUnder(rules), depth);
  if (governing === undefined) return undefined;
  return {
    ...governing,
    end: 'at most',
    ...(measured === undefined && {
      given: 'The brick was not measured, so this is the figure for the thinnest one allowed.',
    }),
  };
}

/** A figure of another place or of a trade body, which binds nobody here: it gets softer words. */
export function isBorrowed({ limit }: Held): boolean {
  return limit.rules === 'good-practice';
}

/** How an answer stands. What was not answered was not seen. A length exactly at its limit is within it. */
export function stateOf(id: QuestionId, rules: RuleSetId, answers: Answers): State {
  const answer = answers[id];
  if (answer === undefined) return 'not answered';
  if (typeof answer !== 'number') return answer;
  const held = isMeasure(id) ? heldTo(id, rules, answers) : undefined;
  if (held === undefined) return 'no figure';
  const passes = held.end === 'at most' ? answer <= held.bound : answer >= held.bound;
  return passes ? 'within' : 'beyond';
}

export function lengthOf(answer: Answers[QuestionId]): Mm | undefined {
  return typeof answer === 'number' ? answer : undefined;
}
