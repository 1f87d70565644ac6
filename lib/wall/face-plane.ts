import type { Mm } from '../units';
import type { PanelSurvey, Placed } from './survey';

/** A straightedge rests on a pad of units, not on one: the reach of a pad each way from a unit's middle, mm. */
const PAD_REACH: Mm = 300;
const PAD_LEAST_UNITS = 5;

/** z = a + b·x + c·y through the face of a panel by least squares over the middles of its units; mm, mm/mm. */
export interface FacePlane {
  readonly along: number;
  readonly up: number;
  readonly at: (x: Mm, y: Mm) => Mm;
}

export function middleX({ unit }: Placed): Mm {
  return unit.x + unit.length / 2;
}

export function middleY({ unit }: Placed): Mm {
  return unit.y - unit.fall / 2 + unit.height / 2;
}

/** Null when the middles do not span a plane. */
export function facePlaneOf(placed: readonly Placed[]): FacePlane | null {
  const count = placed.length;
  let meanX = 0;
  let meanY = 0;
  let meanZ = 0;
  for (const each of placed) {
    meanX += middleX(each);
    meanY += middleY(each);
    meanZ += each.proud;
  }
  meanX /= count;
  meanY /= count;
  meanZ /= count;
  let xx = 0;
  let xy = 0;
  let yy = 0;
  let xz = 0;
  let yz = 0;
  for (const each of placed) {
    const x = middleX(each) - meanX;
    const y = middleY(each) - meanY;
    const z = each.proud - meanZ;
    xx += x * x;
    xy += x * y;
    yy += y * y;
    xz += x * z;
    yz += y * z;
  }
  const determinant = xx * yy - xy * xy;
  if (!(determinant > 0)) return null;
  const along = (xz * yy - yz * xy) / determinant;
  const up = (yz * xx - xz * xy) / determinant;
  return { along, up, at: (x, y) => meanZ + along * (x - meanX) + up * (y - meanY) };
}

export interface Pad {
  readonly placed: Placed;
  /** Mean of how far the units within reach stand off the plane; null with too few of them. */
  readonly off: Mm | null;
}

/** For each unit, how far its pad stands off the plane: one proud unit is bridged, a belly is not. */
export function padsOf(survey: PanelSurvey, plane: FacePlane): readonly Pad[] {
  const rows = survey.courses.map((course) =>
    course.map((placed) => {
      const x = middleX(placed);
      const y = middleY(placed);
      return { placed, x, y, off: placed.proud - plane.at(x, y) };
    }),
  );
  const pads: Pad[] = [];
  for (const [course, row] of rows.entries()) {
    for (const each of row) {
      let sum = 0;
      let count = 0;
      const add = (other: readonly { x: Mm; y: Mm; off: Mm }[]): boolean => {
        let reached = false;
        for (const near of other) {
          if (near.x > each.x + PAD_REACH) break;
          if (Math.abs(near.y - each.y) > PAD_REACH) continue;
          reached = true;
          if (near.x < each.x - PAD_REACH) continue;
          sum += near.off;
          count += 1;
        }
        return reached;
      };
      add(row);
      for (let lower = course - 1; lower >= 0 && nearby(rows[lower], each.y); lower--) add(rows[lower] ?? []);
      for (let upper = course + 1; upper < rows.length && nearby(rows[upper], each.y); upper++) add(rows[upper] ?? []);
      pads.push({ placed: each.placed, off: count >= PAD_LEAST_UNITS ? sum / count : null });
    }
  }
  return pads;
}

/** True while a course can still hold a middle within reach of y; a course may slope, so half a reach is added. */
function nearby(row: readonly { y: Mm }[] | undefined, y: Mm): boolean {
  const first = row?.[0];
  return first !== undefined && Math.abs(first.y - y) <= PAD_REACH * 1.5;
}
