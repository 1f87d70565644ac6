import type { QuickRow } from '../../../components/practise/quick-rows';
import { layWall } from '../../../lib/generate/generate';
import { codeOf } from '../../../lib/generate/wall-code';
import { inspect } from '../../../lib/inspect/inspect';
import type { RuleSetId } from '../../../lib/limits/limit';
import { explainedFinding } from '../explained';
import { partNames } from '../part-names-of';
import { quickBrief } from './quick-walls';

/** Every wall of a round with its key, measured from the wall: what could fall and was missed first, then what else was answered wrongly. */
export function quickRows(rules: RuleSetId, round: number, answers: readonly boolean[]): readonly QuickRow[] {
  const rows = answers.map((saidFaulty, place): QuickRow => {
    const brief = quickBrief(rules, round, place);
    const wall = layWall(brief);
    const nameOf = partNames(wall);
    const findings = inspect(wall, rules);
    return {
      number: place + 1,
      code: codeOf(brief),
      wall,
      faulty: findings.length > 0,
      saidFaulty,
      findings: findings.map((finding, index) => explainedFinding(finding, index + 1, rules, nameOf)),
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
