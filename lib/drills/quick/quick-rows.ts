import { codeOf } from '../../generate/wall-code';
import type { FaceBox } from '../../geometry/box';
import type { View } from '../../views/view';
import { namesOf } from '../../wall/part-names';
import type { SurveyedWall } from '../../wall/surveyed';
import { type ExplainedFinding, explainedFinding } from '../explained-finding';
import { type QuickRoundName, quickPicture } from './quick-picture';

/** One wall of a round that is over, with its key. */
export interface QuickRow {
  /** Its place in the round, from 1. */
  readonly number: number;
  readonly code: string;
  readonly surveyed: SurveyedWall;
  /** What was seen of it, and through which window. */
  readonly view: View;
  readonly window: FaceBox | null;
  readonly faulty: boolean;
  readonly saidFaulty: boolean;
  readonly findings: readonly ExplainedFinding[];
}

/** Every picture of a round with its key: what could fall and was missed first, then what else was answered wrongly. */
export function quickRows(name: QuickRoundName, answers: readonly boolean[]): readonly QuickRow[] {
  const rows = answers.map((saidFaulty, place): QuickRow => {
    const picture = quickPicture(name, place);
    const { brief, findings, view, window } = picture;
    const nameOf = namesOf(picture);
    return {
      number: place + 1,
      code: codeOf(brief),
      surveyed: picture,
      view,
      window,
      faulty: findings.length > 0,
      saidFaulty,
      findings: findings.map((finding, index) => explainedFinding(finding, index + 1, name.rules, nameOf)),
    };
  });
  return [...rows].sort((a, b) => urgencyOf(a) - urgencyOf(b) || a.number - b.number);
}

function urgencyOf(row: QuickRow): number {
  if (isRight(row)) return 2;
  return row.findings.some(({ finding }) => finding.hazard === 'could fall') ? 0 : 1;
}

function isRight({ faulty, saidFaulty }: QuickRow): boolean {
  return faulty === saidFaulty;
}
