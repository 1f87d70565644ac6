import { headWidth } from '../wall/survey';
import { INSTRUMENT } from './instrument-list';
import { notNegative, type Place, type ReadingContext, readOff, worked } from './read-off';
import type { Reading } from './reading';
import { unitAt } from './unit-at';

const { resolution, error } = INSTRUMENT['joint-gauge'];

/** Joint thickness, in the clear between two arrises; of a bed at both ends of the unit on it. Of a lintel: the thickness of its steel. */
export function readJointGauge({ part, panel, survey }: Place, context: ReadingContext): readonly Reading[] {
  const mm = (what: string, value: number) =>
    notNegative(readOff(context, what, { value, unit: 'mm', resolution, error }));
  const placed = unitAt(part, panel);
  if (part.kind === 'head') {
    return placed?.right ? [mm('Width of the joint', headWidth(placed.unit, placed.right.unit))] : [];
  }
  if (part.kind === 'support') {
    const angle = survey.wall.supports.find(({ id }) => id === part.id)?.angle;
    return angle ? [mm('Thickness of the steel', angle.thickness)] : [];
  }
  if (!placed?.bed) return [];
  const left = mm('Bed at the left end', placed.bed.left);
  const right = mm('Bed at the right end', placed.bed.right);
  const [l, r] = [left.value ?? 0, right.value ?? 0];
  return [
    left,
    right,
    // Both ends may be off the opposite way.
    worked(context, 'Difference of the two ends', {
      value: Math.abs(l - r),
      unit: 'mm',
      resolution,
      error: 2 * error,
    }),
    worked(context, 'Mean of the two ends', {
      value: (l + r) / 2,
      unit: 'mm',
      resolution: resolution / 2,
      error,
    }),
  ];
}
