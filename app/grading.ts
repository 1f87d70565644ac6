import { CATALOGUE } from '../lib/inspect/catalogue';
import { type Explanation, explainMark } from '../lib/inspect/explain';
import { CHECKS, type CheckId, type Finding } from '../lib/inspect/finding';
import { inspect } from '../lib/inspect/inspect';
import { toleranceOf } from '../lib/instruments/tolerance';
import type { LimitKind, RuleSetId } from '../lib/limits/limit';
import { ACTS, type Act, rightActOf } from '../lib/marking/act';
import {
  type Answer,
  type AnswerVerdicts,
  countFiveMarks,
  type FiveMarks,
  judgeAnswer,
  LIMIT_KINDS,
  MISSED,
} from '../lib/marking/five-marks';
import { MOST_MARKS, MOST_NAMES_A_PART, type PlacedMark, type Sure } from '../lib/marking/mark';
import { type MatchResult, matchMarks } from '../lib/marking/match';
import { withOneJointOff } from '../lib/marking/one-joint-off';
import { scoreWall } from '../lib/marking/wall-score';
import type { Wall } from '../lib/wall/model';
import { courseId, isOfKind } from '../lib/wall/part-id';
import { type Part, partsOf } from '../lib/wall/parts';

/** A mark as a learner hands it in. */
export interface RawMark {
  readonly part: string;
  readonly fault: string;
  readonly sure?: number;
  /** In the unit of the fault's measure: mm, %, minutes, mm per m … */
  readonly reading?: number;
  readonly kind?: LimitKind;
  readonly act?: Act;
}

export interface FindingResult {
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

export interface MarkResult {
  readonly mark: PlacedMark;
  readonly answer: Answer;
  /** 'left': a look-alike, and the reader said to leave it. It costs nothing, once for each look-alike. */
  readonly outcome: 'found' | 'wrong name' | 'one joint off' | 'repeat' | 'false' | 'left';
  /** Only for a mark that is false or left. */
  readonly explanation: Explanation | null;
}

export interface Result {
  /** 0 to 1. */
  readonly score: number;
  /** Why the score is held down, or null. */
  readonly capped: string | null;
  readonly findings: readonly FindingResult[];
  readonly marks: readonly MarkResult[];
  readonly parts: FiveMarks;
  /** Only on a wall that was handed in unanswered: nothing marked, and not said to be sound. It scores 0. */
  readonly answered?: false;
}

/** A hand-in that cannot be marked: the message says which mark and why. Nothing is marked. */
export class GradingError extends Error {
  override name = 'GradingError';
}

/** How far beside a fault's box a mark still means it, mm: about a joint and a half. */
export const SLACK = 16;

/** Marks a hand-in against the key of a wall; `findings` where the caller has the key already. @throws GradingError for an unknown part or fault, or too many marks. */
export function grade(
  wall: Wall,
  rules: RuleSetId,
  rawMarks: readonly RawMark[],
  findings: readonly Finding[] = inspect(wall, rules),
): Result {
  const placed = placeMarks(wall, rawMarks);
  const answers = rawMarks.map(readAnswer);
  const match = withOneJointOff(matchMarks(findings, placed, SLACK), findings, placed, partsOf(wall), SLACK);
  const marks = markResults(wall, rules, placed, answers, match);
  const left = marks.filter(({ outcome }) => outcome === 'left').length;
  const { score, reason } = scoreWall(findings, { ...match, falseMarks: match.falseMarks - left });
  const results = findings.map((finding, index) => findingResult(finding, index, placed, answers, match));
  return {
    score,
    capped: reason,
    findings: results,
    marks,
    parts: countFiveMarks(
      results.map(({ verdicts }) => verdicts),
      left,
    ),
  };
}

function findingResult(
  finding: Finding,
  index: number,
  placed: readonly PlacedMark[],
  answers: readonly Answer[],
  match: MatchResult,
): FindingResult {
  const { hazard, reach } = CATALOGUE[finding.check];
  const rightAct = rightActOf(hazard, reach);
  const { within } = toleranceOf(finding.check, finding);
  const result = match.findings[index];
  const shared = { finding, within, rightAct, mark: result?.mark ?? null };
  if (result?.outcome !== 'found') {
    return { ...shared, outcome: result?.outcome ?? 'missed', answer: {}, verdicts: MISSED };
  }
  const answer = answerTo(finding, index, placed, answers, match);
  return {
    ...shared,
    outcome: result.rightName ? 'found' : 'wrong name',
    answer,
    verdicts: judgeAnswer(finding, result.rightName, comparable(answer, finding), within, rightAct),
  };
}

/** Without the reading where the finding is in another unit than a reader is asked for. */
function comparable(answer: Answer, { check, unit }: Finding): Answer {
  if (CATALOGUE[check].asks.unit === unit) return answer;
  const { reading: _, ...rest } = answer;
  return rest;
}

/** What all marks of one finding say of it: those that name it first, and of these the first that says anything. */
function answerTo(
  finding: Finding,
  index: number,
  placed: readonly PlacedMark[],
  answers: readonly Answer[],
  match: MatchResult,
): Answer {
  const mine = [...placed.keys()].filter((mark) => match.marks[mark]?.finding === index);
  const naming = mine.filter((mark) => placed[mark]?.fault === finding.check);
  // What is said first stands: a later one does not put it right.
  return Object.assign({}, ...[...naming, ...mine].reverse().map((mark) => answers[mark]));
}

function markResults(
  wall: Wall,
  rules: RuleSetId,
  placed: readonly PlacedMark[],
  answers: readonly Answer[],
  match: MatchResult,
): readonly MarkResult[] {
  // Each look-alike once: else a wall of rough units could be covered with marks that cost nothing.
  const leftAlone = new Set<string>();
  return placed.map((mark, index) => {
    const outcome = match.marks[index]?.outcome ?? 'false';
    const answer = answers[index] ?? {};
    if (outcome !== 'false' || !isCheck(mark.fault)) return { mark, answer, outcome, explanation: null };
    const explanation = explainMark(wall, rules, mark.part, mark.fault);
    const { lookAlike } = explanation;
    const isLeft = answer.act === 'leave' && lookAlike !== null && !leftAlone.has(lookAlike);
    if (isLeft) leftAlone.add(lookAlike);
    return { mark, answer, outcome: isLeft ? 'left' : 'false', explanation };
  });
}

/** A reading farther off than this is a slip of the finger. */
const MOST_READ = 1_000_000;

function readAnswer({ reading, kind, act }: RawMark, index: number): Answer {
  const where = `marks.${index}`;
  if (reading !== undefined && !(Math.abs(reading) <= MOST_READ)) {
    throw new GradingError(`${where}.reading: ${shortened(reading)} is not a number up to ${MOST_READ}`);
  }
  if (kind !== undefined && !LIMIT_KINDS.includes(kind)) {
    throw new GradingError(`${where}.kind: "${shortened(kind)}" is not one of ${LIMIT_KINDS.join(', ')}`);
  }
  if (act !== undefined && !ACTS.includes(act)) {
    throw new GradingError(`${where}.act: "${shortened(act)}" is not one of ${ACTS.join(', ')}`);
  }
  return {
    ...(reading === undefined ? {} : { reading }),
    ...(kind === undefined ? {} : { kind }),
    ...(act === undefined ? {} : { act }),
  };
}

/** Looks marks up on the wall: a fault of a whole panel or course is taken as marked on the whole of it. */
export function placeMarks(wall: Wall, rawMarks: readonly RawMark[]): readonly PlacedMark[] {
  if (rawMarks.length > MOST_MARKS) {
    throw new GradingError(`marks: ${rawMarks.length} handed in, at most ${MOST_MARKS} can be`);
  }
  const parts = partsOf(wall);
  const names = new Map<string, Set<string>>();
  return rawMarks.map((raw, index) => {
    const where = `marks.${index}`;
    const part = parts.get(raw.part);
    if (part === undefined)
      throw new GradingError(`${where}.part: this wall has no part "${shortened(raw.part)}"`);
    if (!isCheck(raw.fault)) {
      throw new GradingError(`${where}.fault: there is no fault "${shortened(raw.fault)}" in the catalogue`);
    }
    const sure = raw.sure ?? 2;
    if (sure !== 1 && sure !== 2 && sure !== 3) {
      throw new GradingError(`${where}.sure: ${shortened(String(sure))} is not 1, 2 or 3`);
    }
    const placed = placedOn(wholeOf(part, raw.fault, parts), raw.fault, sure);
    const given = names.get(placed.part) ?? new Set();
    names.set(placed.part, given.add(raw.fault));
    if (!isOfKind(placed.part, 'panel') && given.size > MOST_NAMES_A_PART) {
      throw new GradingError(
        `${where}: part ${placed.part} has more than ${MOST_NAMES_A_PART} different faults marked on it`,
      );
    }
    return placed;
  });
}

function placedOn(part: Part, fault: string, sure: Sure): PlacedMark {
  return {
    part: part.id,
    panel: part.panel,
    x: part.x + part.width / 2,
    y: part.y + part.height / 2,
    fault,
    sure,
  };
}

function wholeOf(part: Part, fault: CheckId, parts: ReadonlyMap<string, Part>): Part {
  const { markedOn } = CATALOGUE[fault];
  if (markedOn.includes('panel')) return parts.get(part.panel) ?? part;
  if (markedOn.includes('course') && part.course !== null)
    return parts.get(courseId(part.panel, part.course)) ?? part;
  return part;
}

function isCheck(fault: string): fault is CheckId {
  return CHECKS.some((check) => check === fault);
}

function shortened(text: unknown): string {
  const whole = String(text);
  return whole.length > 40 ? `${whole.slice(0, 40)}…` : whole;
}
