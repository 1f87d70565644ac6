import { CATALOGUE } from '../lib/inspect/catalogue';
import { type Explanation, explainMark } from '../lib/inspect/explain';
import { CHECKS, type CheckId, type Finding } from '../lib/inspect/finding';
import { inspect } from '../lib/inspect/inspect';
import type { RuleSetId } from '../lib/limits/limit';
import type { PlacedMark, Sure } from '../lib/marking/mark';
import { matchMarks } from '../lib/marking/match';
import { scoreWall } from '../lib/marking/wall-score';
import type { Wall } from '../lib/wall/model';
import { type Part, partsOf } from '../lib/wall/parts';

/** A mark as a learner hands it in. */
export interface RawMark {
  readonly part: string;
  readonly fault: string;
  readonly sure?: number;
}

export interface FindingResult {
  readonly finding: Finding;
  readonly outcome: 'found' | 'wrong name' | 'missed';
  /** Index of the mark that found it. */
  readonly mark: number | null;
}

export interface MarkResult {
  readonly mark: PlacedMark;
  readonly outcome: 'found' | 'wrong name' | 'repeat' | 'false';
  /** Only for a false mark. */
  readonly explanation: Explanation | null;
}

export interface Result {
  /** 0 to 1. */
  readonly score: number;
  /** Why the score is held down, or null. */
  readonly capped: string | null;
  readonly findings: readonly FindingResult[];
  readonly marks: readonly MarkResult[];
}

/** A hand-in that cannot be marked: the message says which mark and why. Nothing is marked. */
export class GradingError extends Error {
  override name = 'GradingError';
}

/** How far beside a fault's box a mark still means it, mm: about a joint and a half. */
const SLACK = 16;
export const MOST_MARKS = 200;
/** More names than this on one part is guessing. */
const MOST_NAMES_A_PART = 2;

/** Marks a hand-in against the key of a wall. @throws GradingError for an unknown part or fault, or too many marks. */
export function grade(wall: Wall, rules: RuleSetId, rawMarks: readonly RawMark[]): Result {
  const marks = placeMarks(wall, rawMarks);
  const findings = inspect(wall, rules);
  const match = matchMarks(findings, marks, SLACK);
  const { score, reason } = scoreWall(findings, match);
  return {
    score,
    capped: reason,
    findings: findings.map((finding, index) => {
      const result = match.findings[index];
      const found = result?.outcome === 'found';
      return {
        finding,
        outcome: found ? (result.rightName ? 'found' : 'wrong name') : 'missed',
        mark: result?.mark ?? null,
      };
    }),
    marks: marks.map((mark, index) => {
      const outcome = match.marks[index]?.outcome ?? 'false';
      const explains = outcome === 'false' && isCheck(mark.fault);
      return {
        mark,
        outcome,
        explanation: explains ? explainMark(wall, rules, mark.part, mark.fault as CheckId) : null,
      };
    }),
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
    if (!placed.part.match(/^[A-Z]$/) && given.size > MOST_NAMES_A_PART) {
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
  const { scope } = CATALOGUE[fault];
  if (scope === 'panel') return parts.get(part.panel) ?? part;
  if (scope === 'course' && part.course !== null) return parts.get(`${part.panel}${part.course}`) ?? part;
  return part;
}

function isCheck(fault: string): fault is CheckId {
  return CHECKS.some((check) => check === fault);
}

function shortened(text: unknown): string {
  const whole = String(text);
  return whole.length > 40 ? `${whole.slice(0, 40)}…` : whole;
}
