import type { Finding } from '../inspect/finding';
import type { LimitKind } from '../limits/limit';
import type { Act } from './act';

/** The five things looked at in an answer, in the order in which they are done at a wall. */
export const FIVE_MARKS = ['found', 'named', 'measured', 'judged', 'acted'] as const;
export type FiveMark = (typeof FIVE_MARKS)[number];

export interface Count {
  readonly got: number;
  /** Only what was asked and answered: a reading left out is not given, which is not wrong. */
  readonly of: number;
}
export type FiveMarks = Readonly<Record<FiveMark, Count>>;

export const LIMIT_KINDS = [
  'code minimum',
  'standard tolerance',
  'good practice',
  'looks',
] as const satisfies readonly LimitKind[];

/** The parts of an answer that may be left out. */
export interface Answer {
  /** In the unit of the finding's `measured`. */
  readonly reading?: number;
  readonly kind?: LimitKind;
  readonly act?: Act;
}

export const VERDICTS = ['right', 'wrong', 'not given'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** How the answer to one finding stands. */
export interface AnswerVerdicts {
  readonly found: boolean;
  readonly named: boolean;
  readonly measured: Verdict;
  readonly judged: Verdict;
  readonly acted: Verdict;
}

/**
 * Holds what was said of a finding that was found against what was measured. `within`: how near a reading has to come, in the finding's unit;
 * exactly so near is right. Under a wrong name a reading and a kind of limit speak of another fault, so they are not looked at; what to do is.
 */
export function judgeAnswer(
  finding: Pick<Finding, 'measured' | 'kind'>,
  named: boolean,
  { reading, kind, act }: Answer,
  within: number,
  rightAct: Act,
): AnswerVerdicts {
  return {
    found: true,
    named,
    measured: verdictOf(named ? reading : undefined, (given) => Math.abs(given - finding.measured) <= within),
    judged: verdictOf(named ? kind : undefined, (given) => given === finding.kind),
    acted: verdictOf(act, (given) => given === rightAct),
  };
}

export const MISSED: AnswerVerdicts = {
  found: false,
  named: false,
  measured: 'not given',
  judged: 'not given',
  acted: 'not given',
};

/** Counts the five marks of a wall. `rightlyLeft`: look-alikes of which the reader said to leave them. */
export function countFiveMarks(answers: readonly AnswerVerdicts[], rightlyLeft: number): FiveMarks {
  const found = answers.filter((each) => each.found);
  const of = (mark: 'measured' | 'judged' | 'acted'): Count => ({
    got: found.filter((each) => each[mark] === 'right').length,
    of: found.filter((each) => each[mark] !== 'not given').length,
  });
  const acted = of('acted');
  return {
    found: { got: found.length, of: answers.length },
    named: { got: found.filter(({ named }) => named).length, of: found.length },
    measured: of('measured'),
    judged: of('judged'),
    acted: { got: acted.got + rightlyLeft, of: acted.of + rightlyLeft },
  };
}

function verdictOf<T>(given: T | undefined, isRight: (given: T) => boolean): Verdict {
  if (given === undefined) return 'not given';
  return isRight(given) ? 'right' : 'wrong';
}
