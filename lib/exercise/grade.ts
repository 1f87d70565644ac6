import { CATALOGUE } from '../inspect/catalogue';
import { explainMarks } from '../inspect/explain';
import type { Finding } from '../inspect/finding';
import { toleranceOf } from '../instruments/tolerance';
import { rightActOf } from '../marking/act';
import { type Answer, countFiveMarks, judgeAnswer, MISSED } from '../marking/five-marks';
import type { PlacedMark, RawMark } from '../marking/mark';
import { type MatchResult, matchMarks } from '../marking/match';
import { withOneJointOff } from '../marking/one-joint-off';
import { scoreWall } from '../marking/wall-score';
import type { Key } from './key';
import { placeMarks } from './place-marks';
import type { GradedFinding, GradedMark, Result } from './result';

/** How far beside a fault's box a mark still means it, mm: about a joint and a half. */
export const SLACK = 16;

/** Holds marks against the key of a wall: matches, scores and explains them. @throws GradingError for marks that mean nothing on it. */
export function grade(key: Key, rawMarks: readonly RawMark[]): Result {
  const { findings, parts } = key;
  const placed = placeMarks(parts, rawMarks);
  const answers = rawMarks.map(answerIn);
  const match = withOneJointOff(matchMarks(findings, placed, SLACK), findings, placed, parts, SLACK);
  const marks = gradedMarks(key, placed, answers, match);
  const left = marks.filter(({ outcome }) => outcome === 'left').length;
  const { score, reason } = scoreWall(findings, { ...match, falseMarks: match.falseMarks - left });
  const graded = findings.map((finding, index) => gradedFinding(finding, index, placed, answers, match));
  return {
    score,
    capped: reason,
    findings: graded,
    marks,
    parts: countFiveMarks(
      graded.map(({ verdicts }) => verdicts),
      left,
    ),
    answered: true,
  };
}

/** What a mark says beyond place, name and certainty. */
function answerIn({ reading, kind, act }: RawMark): Answer {
  return {
    ...(reading === undefined ? {} : { reading }),
    ...(kind === undefined ? {} : { kind }),
    ...(act === undefined ? {} : { act }),
  };
}

function gradedFinding(
  finding: Finding,
  index: number,
  placed: readonly PlacedMark[],
  answers: readonly Answer[],
  match: MatchResult,
): GradedFinding {
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

function gradedMarks(
  key: Key,
  placed: readonly PlacedMark[],
  answers: readonly Answer[],
  match: MatchResult,
): readonly GradedMark[] {
  const outcomes = placed.map((_, index) => match.marks[index]?.outcome ?? 'false');
  const wrong = [...placed.keys()].filter((index) => outcomes[index] === 'false');
  const explained = explainMarks(
    key,
    key.rules,
    wrong.flatMap((index) => placed[index] ?? []),
  );
  const explanations = new Map(wrong.map((index, at) => [index, explained[at]]));
  // Each look-alike once: else a wall of rough units could be covered with marks that cost nothing.
  const leftAlone = new Set<string>();
  return placed.map((mark, index) => {
    const answer = answers[index] ?? {};
    const explanation = explanations.get(index) ?? null;
    const lookAlike = explanation?.lookAlike ?? null;
    const isLeft = answer.act === 'leave' && lookAlike !== null && !leftAlone.has(lookAlike);
    if (isLeft) leftAlone.add(lookAlike);
    return { mark, answer, outcome: isLeft ? 'left' : (outcomes[index] ?? 'false'), explanation };
  });
}
