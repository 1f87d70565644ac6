import type { CheckId, Finding, Hazard } from '../../../lib/inspect/finding';
import type { PlacedMark } from '../../../lib/marking/mark';
import type { PartId } from '../../../lib/wall/part-id';

/** An invented finding; only what marking reads matters. Region: x, y, width, height in mm on panel A. */
export function sampleFinding(
  check: CheckId,
  parts: readonly PartId[],
  [x, y, width, height]: readonly [number, number, number, number],
  more: { readonly hazard?: Hazard; readonly panel?: string } = {},
): Finding {
  return {
    check,
    parts,
    region: { panel: more.panel ?? 'A', x, y, width, height },
    measured: 20,
    unit: 'mm',
    limit: 13,
    margin: -7,
    kind: 'good practice',
    hazard: more.hazard ?? 'looks',
    source: {
      limit: 'bed-joint-most',
      rules: 'good-practice',
      title: 'invented',
      edition: '',
      clause: '',
      howSure: 'common practice',
    },
  };
}

/** A mark on panel A. */
export function sampleMark(
  part: PartId,
  [x, y]: readonly [number, number],
  fault: CheckId,
  more: Partial<PlacedMark> = {},
): PlacedMark {
  return { part, panel: 'A', x, y, fault, sure: 2, ...more };
}

/** Rows of numbers from text, for example '1 2 / 3 4'. */
export function sampleTable(text: string): readonly (readonly number[])[] {
  return text.split('/').map((row) => row.trim().split(' ').map(Number));
}
