import type { DrawnMark } from '../../../../components/wall/wall-drawing';
import type { PairRows } from '../../../../lib/drills/pair/pair-rows';
import type { FindingDimension } from '../../../../lib/views/pointing/finding-dimension';
import type { Part } from '../../../../lib/wall/parts';
import type { usePair } from './use-pair';

/** The reader's marks on the wall pointed to; once told, what differs, ringed on both walls. */
export function drawnOn(
  number: 1 | 2,
  { rows, side, marks, pair }: ReturnType<typeof usePair>,
  parts: ReadonlyMap<string, Part>,
): readonly DrawnMark[] {
  if (rows) {
    return rows.findings.map(({ finding, number: at, outcome }) => ({
      part: finding.parts[0] ?? finding.region.panel,
      number: at,
      state:
        number !== pair.spoiledIs
          ? 'mark'
          : outcome === 'found' || outcome === 'wrong name'
            ? 'found'
            : 'missed',
      ...finding.region,
    }));
  }
  if (side !== number) return [];
  return marks.flatMap(({ part: id }, index) => {
    const part = parts.get(id);
    if (!part) return [];
    const { panel, x, y, width, height } = part;
    return [{ part: id, number: index + 1, state: 'mark' as const, panel, x, y, width, height }];
  });
}

/** What was measured, as dimension lines. */
export function dimensionsOf(rows: PairRows | null): readonly FindingDimension[] {
  return (rows?.findings ?? []).map(({ number, finding }) => ({ ...finding, number }));
}
