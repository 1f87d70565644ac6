import type { Explanation } from '../inspect/explain';
import type { Finding } from '../inspect/finding';
import type { Act } from '../marking/act';
import type { Answer, AnswerVerdicts, FiveMarks } from '../marking/five-marks';
import type { PlacedMark } from '../marking/mark';

/** What became of one finding, and of what was said of it. */
export interface GradedFinding {
  readonly finding: Finding;
  readonly outcome: 'found' | 'wrong name' | 'one joint off' | 'missed';
  /** Index of the mark that found it, or came one joint off it. */
  readonly mark: number | null;
  /** What else was said of it, from its marks together, and how that stands. */
  readonly answer: Answer;
  readonly verdicts: AnswerVerdicts;
  /** How near a reading has to come, in the finding's unit. */
  readonly within: number;
  readonly rightAct: Act;
}

/** What became of one mark. */
export interface GradedMark {
  readonly mark: PlacedMark;
  readonly answer: Answer;
  /** 'left': a look-alike, and the reader said to leave it. It costs nothing, once for each look-alike. */
  readonly outcome: 'found' | 'wrong name' | 'one joint off' | 'repeat' | 'false' | 'left';
  /** Only for a mark that is false or left. */
  readonly explanation: Explanation | null;
}

/** What marks on one wall come to. */
export interface Result {
  /** 0 to 1. */
  readonly score: number;
  /** Why the score is held down, or null. */
  readonly capped: string | null;
  readonly findings: readonly GradedFinding[];
  readonly marks: readonly GradedMark[];
  readonly parts: FiveMarks;
  /** False for a wall of set work on which nothing was marked and which was not said to be sound. It scores 0. */
  readonly answered: boolean;
}

/** What a hand-in comes to. */
export interface Graded {
  /** The engine of the day, and the rule set where it was not the walls' own. */
  readonly engine: string;
  /** One a wall, in order of place. */
  readonly results: readonly Result[];
  /** 0 to 1. */
  readonly score: number;
}
