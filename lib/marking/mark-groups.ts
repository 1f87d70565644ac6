import type { PlacedMark } from './mark';

/** Marks that say the same: one part, one fault. They count once, whatever their number. */
export interface MarkGroup {
  readonly part: string;
  readonly fault: string;
  /** Indices into the marks as handed in; the most certain first, then by place. Never empty. */
  readonly marks: readonly number[];
}

/**
 * Gathers marks of one part and fault into groups. Groups, and the marks in each, come out in an order
 * that depends on what the marks say and not on the order in which they were handed in.
 */
export function groupMarks(marks: readonly PlacedMark[]): readonly MarkGroup[] {
  const sorted = marks.map((mark, index) => ({ mark, index })).sort((a, b) => compareMarks(a.mark, b.mark));
  const groups: { part: string; fault: string; marks: number[] }[] = [];
  for (const { mark, index } of sorted) {
    const last = groups.at(-1);
    if (last && last.part === mark.part && last.fault === mark.fault) last.marks.push(index);
    else groups.push({ part: mark.part, fault: mark.fault, marks: [index] });
  }
  return groups;
}

function compareMarks(a: PlacedMark, b: PlacedMark): number {
  return (
    compareText(a.part, b.part) ||
    compareText(a.fault, b.fault) ||
    b.sure - a.sure ||
    compareText(a.panel, b.panel) ||
    a.x - b.x ||
    a.y - b.y
  );
}

// By code unit: localeCompare differs between engines and settings.
function compareText(a: string, b: string): number {
  if (a < b) return -1;
  return a > b ? 1 : 0;
}
