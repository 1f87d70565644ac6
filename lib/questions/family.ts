import type { RuleSetId } from '../limits/limit';
import type { LengthSystem } from '../units';
import type {
  ChooseQuestion,
  LimitKindQuestion,
  NumberQuestion,
  OrderQuestion,
  PickQuestion,
  Question,
} from './question';
import type { QuestionTopic } from './topics';

/** Seeded chance, as far as questions need it. That of lib/generate fits; questions may not know it. */
export interface Chance {
  /** A whole number from `least` to `most`, both included. */
  readonly whole: (least: number, most: number) => number;
  readonly pick: <T>(from: readonly T[]) => T;
  /** True in `percent` of a hundred draws. */
  readonly happens: (percent: number) => boolean;
}

/** What a question is asked by. Sizes are made round in the system of lengths, so that what is shown is exact. */
export interface Ask {
  readonly chance: Chance;
  readonly rules: RuleSetId;
  readonly system: LengthSystem;
}

type Bare<Q> = Omit<Q, 'family' | 'topic' | 'rules'>;
export type Draft =
  | Bare<NumberQuestion>
  | Bare<ChooseQuestion>
  | Bare<LimitKindQuestion>
  | Bare<PickQuestion>
  | Bare<OrderQuestion>;

/** Questions of one sort: the same idea, other numbers or other choices each time. */
export interface Family {
  readonly id: string;
  readonly topic: QuestionTopic;
  /** Whether it is asked under a rule set at all: not where its code is silent and another's rule would mislead. */
  readonly isAsked: (rules: RuleSetId) => boolean;
  readonly ask: (ask: Ask) => Question;
}

/** @param name unique within the topic. */
export function familyOf(
  topic: QuestionTopic,
  name: string,
  draft: (ask: Ask) => Draft,
  isAsked: Family['isAsked'] = () => true,
): Family {
  const id = `${topic}/${name}`;
  return { id, topic, isAsked, ask: (ask) => ({ ...draft(ask), family: id, topic, rules: ask.rules }) };
}
