import type { RuleSetId } from '../limits/limit';
import type { Mm } from '../units';
import type { QuestionTopic } from './topics';

/** A small drawing told by its sizes; a component draws it. Lengths in mm. */
export type QuestionDrawing =
  /** The back of an adhered unit, seen square on: where mortar touched. */
  | { readonly kind: 'back'; readonly spread: 'full' | 'ring' | 'dabs' | 'ridges' }
  /** One bed joint between two units, thickness at either end. */
  | { readonly kind: 'bed'; readonly left: Mm; readonly right: Mm }
  /** A section: a unit on its ledge. */
  | { readonly kind: 'ledge'; readonly depth: Mm; readonly overhang: Mm }
  /** A lintel from the front: what stands on the wall at either side. */
  | { readonly kind: 'lintel'; readonly opening: Mm; readonly left: Mm; readonly right: Mm }
  /** A section: a tie across the air space. Fall is how much lower its outer end is. */
  | { readonly kind: 'tie'; readonly fall: Mm }
  /** Two courses: how far the head joint stands from the one below. */
  | { readonly kind: 'lap'; readonly length: Mm; readonly offset: Mm }
  /** A section: flashing at the base of a wall. */
  | {
      readonly kind: 'flashing';
      readonly lap: 'behind the barrier' | 'in front';
      readonly reach: 'past the face' | 'short';
    };

/** A value that a known mistake leads to, in the unit of the question, and what that mistake is. */
export interface Mistake {
  readonly value: number;
  readonly why: string;
}

/** `why` says why this one is right or wrong, in a sentence of its own. */
export interface Option {
  readonly id: string;
  readonly text: string;
  readonly why: string;
  readonly drawing?: QuestionDrawing;
}

export type NumberUnit =
  | 'mm'
  | 'in'
  | '%'
  | 'm²'
  | 'sq ft'
  | 'J'
  | 'ft·lbf'
  | 'm/s'
  | 'ft/s'
  | 'kN'
  | 'lbf'
  | 'volumes'
  | 'ties'
  | 'holes'
  | 'litres'
  | 'cu ft'
  | 'units'
  | 'times';

interface Asked {
  /** The id of the family. */
  readonly family: string;
  readonly topic: QuestionTopic;
  readonly rules: RuleSetId;
  readonly prompt: string;
  /** Shown after every answer, right or wrong: how the answer comes about. */
  readonly explanation: string;
  /** Where the answer is from: the limit's source, the formula, or common practice. */
  readonly source: string;
}

export interface NumberQuestion extends Asked {
  readonly kind: 'number';
  readonly unit: NumberUnit;
  readonly answer: number;
  /** How far off an answer may be, in the unit; that far off is right. */
  readonly tolerance: number;
  readonly mistakes: readonly Mistake[];
}

export interface ChooseQuestion extends Asked {
  readonly kind: 'choose';
  readonly options: readonly Option[];
  /** The id of the right option. */
  readonly answer: string;
}

/** Which of the four kinds a limit is. */
export interface LimitKindQuestion extends Asked {
  readonly kind: 'limit-kind';
  readonly options: readonly Option[];
  readonly answer: string;
}

export interface PickQuestion extends Asked {
  readonly kind: 'pick';
  readonly options: readonly Option[];
  /** Ids of all that apply: at least one, never all. */
  readonly answer: readonly string[];
}

export interface OrderQuestion extends Asked {
  readonly kind: 'order';
  /** In the order they are shown in. `why` says why the step comes where it does. */
  readonly options: readonly Option[];
  /** Ids in the right order. */
  readonly answer: readonly string[];
}

export type Question = NumberQuestion | ChooseQuestion | LimitKindQuestion | PickQuestion | OrderQuestion;

/** What a learner gives: a number in the question's unit, one id, or several. */
export type Answer = number | string | readonly string[];
