import type { Finding } from '../inspect/finding';
import { isOfKind, kindOf, type PartId } from '../wall/part-id';
import type { PlacedMark } from './mark';

/** Distances are compared in eighths of a millimetre, the grid on which walls are laid. */
const STEPS_PER_MM = 8;

/** 16 metres in steps. Whatever is farther, or on another panel, counts as this far: it only settles ties. */
export const FARTHEST = 131_072;

/** True for a whole panel ('A') or course ('A12'); false for every smaller part ('A12.5', 'A-ledge', 'batch-2'). */
export function isWide(part: PartId): boolean {
  const kind = kindOf(part);
  return kind === 'panel' || kind === 'course';
}

/** True when a place on the wall can point to the finding; false when its first part is a whole panel, a course or a mixing. */
export function takesPlaces(finding: Finding): boolean {
  const [first] = finding.parts;
  return first !== undefined && !isWide(first) && !isOfKind(first, 'batch');
}

/**
 * True when a mark can mean a finding: it marks one of its parts, or it lies in the finding's region
 * grown by `slack` mm on every side (ends belong). A mark on a whole panel or course, and a finding of a whole
 * panel, course or mixing, go by parts only. The fault that the mark names plays no role here.
 */
export function canMean(mark: PlacedMark, finding: Finding, slack: number): boolean {
  if (finding.parts.includes(mark.part)) return true;
  if (isWide(mark.part) || !takesPlaces(finding)) return false;
  const { panel, x, y, width, height } = finding.region;
  return (
    mark.panel === panel &&
    mark.x >= x - slack &&
    mark.x <= x + width + slack &&
    mark.y >= y - slack &&
    mark.y <= y + height + slack
  );
}

/** From the place marked to the centre of the finding's region, in whole eighths of a mm, 0 to FARTHEST. */
export function distanceInSteps(mark: PlacedMark, finding: Finding): number {
  const { panel, x, y, width, height } = finding.region;
  if (mark.panel !== panel) return FARTHEST;
  const dx = mark.x - (x + width / 2);
  const dy = mark.y - (y + height / 2);
  return Math.min(FARTHEST, Math.round(Math.sqrt(dx * dx + dy * dy) * STEPS_PER_MM));
}
