import type { Finding } from '../inspect/finding';
import type { Act } from '../marking/act';
import type { Answer, AnswerVerdicts, FiveMarks } from '../marking/five-marks';

/** What the catalogue says about a fault, in plain words. */
export interface FaultTexts {
  readonly name: string;
  readonly looksLike: string;
  readonly measuredBy: string;
  readonly whyItMatters: string;
  readonly putsRight: string;
  readonly caughtAt: string;
}

export interface FindingRow {
  /** Number of its ring on the wall. */
  readonly number: number;
  readonly finding: Finding;
  readonly outcome: 'found' | 'wrong name' | 'one joint off' | 'missed';
  readonly texts: FaultTexts;
  readonly place: string;
  /** The fault the learner named there, when it was another. */
  readonly namedAs: string | null;
  /** Why the name or the place given was near, when there is something to say. */
  readonly note?: string;
  /** Name of the rule set the limit comes from. */
  readonly rulesTitle: string;
  /** True where the rule set in use says nothing, and another one's figure stands in. */
  readonly standsIn: boolean;
  /** What the reader said of it beyond place and name, and how that stands. */
  readonly answer: Answer;
  readonly verdicts: AnswerVerdicts;
  /** How near a reading had to come, in the finding's unit. */
  readonly within: number;
  readonly rightAct: Act;
  /** The reader was certain, and named another fault. */
  readonly certainWrong: boolean;
  /** Address of the passage of the lesson on this fault. */
  readonly lesson: string;
}

/** A measurement that stayed within its limit. */
export interface Within {
  readonly value: number;
  readonly limit: number;
  readonly end: 'at most' | 'at least';
  readonly unit: string;
  /** True where the value is the mean of both ends of a bed. */
  readonly isMean?: boolean;
  /** True where a bed is held against the mean of eight: the value is how far it is off that mean. */
  readonly offMean?: boolean;
  readonly source: string;
}

/** A mark at a place that is within its limits. */
export interface FalseRow {
  readonly number: number;
  readonly faultName: string;
  readonly place: string;
  readonly part: string;
  /** Null where that fault cannot be measured at that part. */
  readonly within: Within | null;
  /** What it may have been taken for, and why that is all right. */
  readonly lookAlike: string | null;
  readonly certainWrong: boolean;
}

/** A look-alike of which the reader said to leave it: rightly. It has no ring. */
export interface LeftRow {
  readonly faultName: string;
  readonly place: string;
  readonly part: string;
  readonly lookAlike: string;
}

/** Of all that was measured on a sound wall what came nearest to its limit. */
export interface TightestRow {
  readonly faultName: string;
  readonly place: string;
  readonly part: string;
  readonly within: Within;
}

export interface ResultRows {
  /** 0 to 1. */
  readonly score: number;
  /** False where nothing was marked and the wall was not said to be sound. */
  readonly answered: boolean;
  /** Why the score is held down, or null. */
  readonly capped: string | null;
  readonly parts: FiveMarks;
  /** What could fall and was missed comes first, then what the reader was certain of and wrong about. */
  readonly findings: readonly FindingRow[];
  readonly falseMarks: readonly FalseRow[];
  readonly left: readonly LeftRow[];
  /** Look-alikes on the wall that the reader did not mark at all. */
  readonly tempting: readonly LeftRow[];
  /** Null on a wall with faults, and where nothing was measured. */
  readonly tightest: TightestRow | null;
  /** Marks that repeat another: neither counted nor taken off. */
  readonly repeats: number;
  readonly marked: number;
}
