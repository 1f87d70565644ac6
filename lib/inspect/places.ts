import { boxRound } from '../geometry/box';
import { isTall } from '../wall/model';
import type { PanelSurvey, Placed } from '../wall/survey';
import type { Region } from './finding';

/** Box round the faces of units. */
export function boxOf(placed: readonly Placed[]): Region {
  let left = Number.POSITIVE_INFINITY;
  let bottom = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  let top = Number.NEGATIVE_INFINITY;
  for (const { unit } of placed) {
    left = Math.min(left, unit.x);
    right = Math.max(right, unit.x + unit.length);
    bottom = Math.min(bottom, unit.y, unit.y - unit.fall);
    top = Math.max(top, unit.y + unit.height, unit.y - unit.fall + unit.height);
  }
  return {
    panel: placed[0]?.unit.panel ?? '',
    x: left,
    y: bottom,
    width: right - left,
    height: top - bottom,
  };
}

/** The bed under a unit. */
export function bedBox({ unit, bed }: Placed): Region {
  const right = unit.y - unit.fall;
  const top = Math.max(unit.y, right);
  const bottom = bed === null ? top : Math.min(unit.y - bed.left, right - bed.right);
  return { panel: unit.panel, x: unit.x, y: bottom, width: unit.length, height: top - bottom };
}

/** The head joint to the right of a unit. */
export function headBox(left: Placed): Region {
  const { unit } = left;
  const right = left.right?.unit ?? unit;
  const end = unit.x + unit.length;
  const bottom = Math.min(unit.y - unit.fall, right.y);
  const tops = [unit.y - unit.fall + unit.height, right.y + right.height];
  // Beside a taller unit the joint ends with the lower of the two.
  const top = isTall(unit) === isTall(right) ? Math.max(...tops) : Math.min(...tops);
  return { panel: unit.panel, x: end, y: bottom, width: Math.max(0, right.x - end), height: top - bottom };
}

export function panelBox({ panel, placed }: PanelSurvey): Region {
  const { y, height } = boxOf(placed);
  return { panel: panel.id, x: 0, y, width: panel.length, height };
}

/** Smallest box round several boxes of one panel. */
export function joined(boxes: readonly Region[]): Region {
  return { panel: boxes[0]?.panel ?? '', ...boxRound(boxes) };
}
