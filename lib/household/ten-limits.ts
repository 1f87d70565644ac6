import { departureBound } from '../limits/bound';
import type { Limit, LimitKind, RuleSetId } from '../limits/limit';
import { limitOf, namedLimitOf } from '../limits/limits';
import { type LengthSystem, MM_PER_M, type Mm } from '../units';
import { boundWords, plainLength, withLengths } from './lengths';
import { type Held, heldTo } from './measures';
import type { Answers, MeasureId } from './stops';

/** One figure a person can check from the ground with a tape, a string or a batten. */
export interface GroundLimit {
  readonly title: string;
  readonly how: string;
  readonly asked: string;
  readonly kind: LimitKind;
  readonly source: string;
  readonly sourceKey: string;
  readonly borrowed: boolean;
}

interface Entry {
  readonly title: string;
  readonly how: string;
  readonly at: (rules: RuleSetId) => Held | undefined;
}

const ROW: Mm = 3000;
const STOREY: Mm = 2400;
const USUAL_BRICK: Answers = { 'brick-depth': 90 };

const ENTRIES: readonly Entry[] = [
  {
    title: 'How far off to stand when you judge its looks',
    how: 'In daylight, with no low sun along the wall.',
    at: (rules) => metres(namedLimitOf(rules, 'viewing-distance')),
  },
  {
    title: 'A row of bricks out of level, over {row}',
    how: 'Stretch a string over a row, with a small level on it.',
    at: (rules) => run(limitOf(rules, 'course-level'), ROW),
  },
  {
    title: 'A wall out of upright, over one floor ({storey})',
    how: 'Hang a weight on a string beside it. Compare the top with the bottom.',
    at: (rules) => run(limitOf(rules, 'plumb'), STOREY),
  },
  {
    title: 'A gap under a straight batten of {batten}',
    how: 'Hold it along the wall, away from rough bricks.',
    at: (rules) => heldTo('batten-gap', rules, {}),
  },
  { title: 'The widest upright joint', how: 'From brick end to brick end.', at: measure('joint-width') },
  {
    title: 'The lowest brick past its base, for a brick {brick} thick',
    how: 'Put a ruler under the brick, against the base.',
    at: measure('overhang', USUAL_BRICK),
  },
  {
    title: 'Steel past each side of an opening',
    how: 'Where you can see its end. For wide openings.',
    at: measure('bearing'),
  },
  {
    title: 'From one slot at the base to the next',
    how: 'Along the wall, the widest space.',
    at: measure('slot-spacing'),
  },
  {
    title: 'Slots above the ground or the paving',
    how: 'Where the ground is highest.',
    at: measure('clearance'),
  },
  {
    title: 'A crack that does not grow and has no step',
    how: 'With a ruler across it. Wider goes to an engineer. No width makes a crack safe.',
    at: measure('crack-width'),
  },
];

/** Ten limits a layman can check from the ground, by one rule set, in one system of lengths. */
export function groundLimits(rules: RuleSetId, system: LengthSystem): readonly GroundLimit[] {
  return ENTRIES.flatMap(({ title, how, at }) => {
    const held = at(rules);
    if (held === undefined) return [];
    const { limit, bound, end } = held;
    return {
      title: titled(title, system),
      how,
      asked: boundWords(end, bound, system),
      kind: limit.kind,
      source: `${limit.edition}, ${limit.clause}`,
      sourceKey: limit.source,
      borrowed: limit.rules === 'good-practice' && rules !== 'good-practice',
    };
  });
}

function titled(title: string, system: LengthSystem): string {
  const lengths = withLengths(title, system);
  return lengths
    .replace('{row}', system === 'mm' ? '3 m' : '10 ft')
    .replace('{storey}', system === 'mm' ? '2.4 m' : '8 ft')
    .replace('{brick}', plainLength(USUAL_BRICK['brick-depth'] as Mm, system));
}

function measure(id: MeasureId, given: Answers = {}) {
  return (rules: RuleSetId) => heldTo(id, rules, given);
}

function run(limit: Limit | undefined, length: Mm): Held | undefined {
  return limit && { limit, bound: departureBound(limit.bound, length), end: 'at most' };
}

function metres(limit: Limit | undefined): Held | undefined {
  return limit?.bound.form === 'number'
    ? { limit, bound: limit.bound.value * MM_PER_M, end: 'at least' }
    : undefined;
}
