import type { PlacedMark } from './mark';

/** Marks that say the same of the same place: one part, one fault, one point. They count once. */
export interface MarkGroup {
  readonly part: string;
  readonly fault: string;
  /** Stands for the group: the most certain. Index into the marks as handed in. */
  readonly first: number;
  /** The others, surest first. */
  readonly rest: readonly number[];
}

/**
 * Gathers equal marks into groups. Groups, and the marks in each, come out in an order that depends on what the
 * marks say and not on the order in which they were handed in.
 */
export function groupMarks(marks: readonly PlacedMark[]): readonly MarkGroup[] {
  const sorted = marks
    .map((mark, index) => ({ mark, index }))
    .sort((a, b) => comparePlaces(a.mark, b.mark) || b.mark.sure - a.mark.sure);
  const groups: { part: string; fault: string; first: number; rest: number[] }[] = [];
  let before: PlacedMark | null = null;
  for (const { mark, index } of sorted) {
    const group = groups.at(-1);
    if (group && before && comparePlaces(before, mark) === 0) group.rest.push(index);
    else groups.push({ part: mark.part, fault: mark.fault, first: index, rest: [] });
    before = mark;
  }
  return groups;
}

function comparePlaces(a: PlacedMark, b: PlacedMark): number {
  return (
    compareText(a.part, b.part) ||
    compareText(a.fault, b.fault) ||
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
