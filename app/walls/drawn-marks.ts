import type { DrawnMark } from '../../components/wall/wall-drawing-props';
import type { Mark } from '../../components/wall-page/work-state';
import type { FindingDimension } from '../../lib/views/pointing/finding-dimension';
import type { Part } from '../../lib/wall/parts';
import type { ResultRows } from '../../lib/wall-page/result-rows';

/** The learner's marks as rings on the wall, numbered as in the list. */
export function drawnMarks(marks: readonly Mark[], parts: ReadonlyMap<string, Part>): readonly DrawnMark[] {
  return marks.flatMap((mark, index) => {
    const part = parts.get(mark.part);
    return part ? [{ ...boxOf(part), number: index + 1, state: 'mark' as const }] : [];
  });
}

/** After hand-in: a ring for every fault, found or missed, and one for every false mark, numbered as in the result. */
export function drawnResult(rows: ResultRows, parts: ReadonlyMap<string, Part>): readonly DrawnMark[] {
  return [
    ...rows.findings.map(
      ({ number, outcome, finding }): DrawnMark => ({
        number,
        part: finding.parts[0] ?? finding.region.panel,
        ...finding.region,
        state: outcome === 'found' || outcome === 'wrong name' ? 'found' : 'missed',
      }),
    ),
    ...rows.falseMarks.flatMap(({ number, part: id }) => {
      const part = parts.get(id);
      return part ? [{ ...boxOf(part), number, state: 'false' as const }] : [];
    }),
  ];
}

/** What was measured at the fault shown, or at every fault, drawn where it was measured. */
export function measuredAt(rows: ResultRows, shown: number | null): readonly FindingDimension[] {
  return rows.findings
    .filter(({ number, finding }) => finding.unit !== 'there or not' && (shown === null || number === shown))
    .map(({ number, finding }) => {
      const { check, parts, region, measured, unit, source } = finding;
      return { number, check, parts, region, measured, unit, source };
    });
}

function boxOf({ id, panel, x, y, width, height }: Part) {
  return { part: id, panel, x, y, width, height };
}
