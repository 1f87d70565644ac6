import type { Box } from '../../geometry/box';
import type { Unit } from '../../wall/model';
import type { Contact } from '../state/model';
import type { Hold } from './hold';
import { faceOf, weightOf } from './loads';
import { ADHERED_SHEAR, BACK_BED, SUCTION, TENSION_BOND } from './strengths';

/** How a unit stuck to its backing is held: sheared down it, peeled off by the lever of its weight, drawn off by suction. */
export function adheredHolds(unit: Unit, back: Contact): readonly Hold[] {
  const held = back.state === 'bonded' ? (back.held ?? []) : [];
  const strips = stripsOf(held);
  const area = strips.reduce((sum, { width, height }) => sum + width * height, 0);
  const weight = weightOf(unit);
  return [
    {
      mode: 'shears down its back',
      kind: 'gravity',
      resistance: ADHERED_SHEAR * area * back.sound,
      demand: weight,
      unit: 'N',
    },
    {
      mode: 'peels off its back',
      kind: 'gravity',
      resistance: TENSION_BOND * back.sound * sectionModulus(strips),
      demand: weight * (unit.depth / 2 + BACK_BED),
      unit: 'N·mm',
    },
    {
      mode: 'drawn off by suction',
      kind: 'wind',
      resistance: TENSION_BOND * area * back.sound,
      demand: SUCTION * faceOf(unit),
      unit: 'N',
    },
  ];
}

/** The union of boxes as boxes that do not overlap, in rows from the bottom. */
function stripsOf(boxes: readonly Box[]): readonly Box[] {
  const levels = [...new Set(boxes.flatMap(({ y, height }) => [y, y + height]))].sort((a, b) => a - b);
  return levels.slice(1).flatMap((top, index) => {
    const y = levels[index] ?? 0;
    const across = boxes.filter((box) => box.y <= y && box.y + box.height >= top).sort((a, b) => a.x - b.x);
    const strips: Box[] = [];
    let reached = Number.NEGATIVE_INFINITY;
    for (const { x, width } of across) {
      const from = Math.max(reached, x);
      if (x + width > from) strips.push({ x: from, y, width: x + width - from, height: top - y });
      reached = Math.max(reached, x + width);
    }
    return strips;
  });
}

/** Second moment of area about the level axis through the middle of what holds, over the distance to its far edge, mm³. */
function sectionModulus(strips: readonly Box[]): number {
  let area = 0;
  let moment = 0;
  for (const { y, width, height } of strips) {
    area += width * height;
    moment += width * height * (y + height / 2);
  }
  if (area === 0) return 0;
  const centre = moment / area;
  let second = 0;
  let farthest = 0;
  for (const { y, width, height } of strips) {
    const off = y + height / 2 - centre;
    second += (width * height * height * height) / 12 + width * height * off * off;
    farthest = Math.max(farthest, Math.abs(y - centre), Math.abs(y + height - centre));
  }
  return second / farthest;
}
