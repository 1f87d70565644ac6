import type { RuleSetId } from '../../lib/limits/limit';
import type { Batch, Wall } from '../../lib/wall/model';
import { numberOf } from './bounds';
import { courseName } from './geometry';
import { found, isOver, type NaiveFinding } from './naive-finding';

export function measureMortar(wall: Wall, rules: RuleSetId): NaiveFinding[] {
  const findings: NaiveFinding[] = [];
  for (const batch of wall.batches) {
    const parts = [batch.id, ...coursesLaidWith(wall, batch)];
    const life = numberOf(rules, 'mortar-life', { air: batch.air });
    if (life !== undefined && isOver(batch.minutes, life)) {
      findings.push(found('stale-mortar', parts, batch.minutes, life));
    }
    const most = numberOf(rules, 'sand-ratio');
    const ratio = batch.sand / (batch.portland + batch.lime);
    if (most !== undefined && isOver(ratio, most)) findings.push(found('lean-mortar', parts, ratio, most));
  }
  return findings;
}

/** Ends belong; a panel that has no such course gives none. */
function coursesLaidWith(wall: Wall, batch: Batch): string[] {
  const names: string[] = [];
  for (const panel of wall.panels) {
    for (let course = batch.fromCourse; course <= batch.toCourse; course += 1) {
      if (course >= 1 && course <= panel.courses) names.push(courseName(panel.id, course));
    }
  }
  return names;
}
