import type { Mm } from '../units';
import type { PanelSurvey, Placed } from './survey';

/** A straightedge rests on a pad of units, not on one: the reach of a pad each way from a unit's middle, mm. */
const PAD_REACH: Mm = 300;
const PAD_LEAST_UNITS = 5;
/** A face of fewer units is not judged as a plane. */
export const FACE_LEAST_UNITS = 24;

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

/** A course's middles from the left, and the running sums of how far they stand off the plane. */
interface Row {
  readonly placed: readonly Placed[];
  readonly xs: readonly Mm[];
  readonly ys: readonly Mm[];
  /** One more than the units: `sums[n]` is the sum of the first n. */
  readonly sums: readonly Mm[];
  readonly lowest: Mm;
  readonly highest: Mm;
}

/** For each unit, how far its pad stands off the plane: one proud unit is bridged, a belly is not. */
export function padsOf(survey: PanelSurvey, plane: FacePlane): readonly Pad[] {
  const rows = survey.courses.map((course) => rowOf(course, plane));
  const pads: Pad[] = [];
  for (const row of rows) {
    const near = rows.filter(
      (other) => other.lowest <= row.highest + PAD_REACH && other.highest >= row.lowest - PAD_REACH,
    );
    const windows = near.map(() => ({ from: 0, to: 0 }));
    for (const [index, placed] of row.placed.entries()) {
      const x = row.xs[index] ?? 0;
      const y = row.ys[index] ?? 0;
      let sum = 0;
      let count = 0;
      for (const [each, other] of near.entries()) {
        const window = windows[each];
        if (window === undefined) continue;
        while (window.from < other.xs.length && (other.xs[window.from] ?? 0) < x - PAD_REACH)
          window.from += 1;
        while (window.to < other.xs.length && (other.xs[window.to] ?? 0) <= x + PAD_REACH) window.to += 1;
        if (other.lowest >= y - PAD_REACH && other.highest <= y + PAD_REACH) {
          sum += (other.sums[window.to] ?? 0) - (other.sums[window.from] ?? 0);
          count += window.to - window.from;
        } else {
          for (let at = window.from; at < window.to; at++) {
            if (Math.abs((other.ys[at] ?? 0) - y) > PAD_REACH) continue;
            sum += (other.sums[at + 1] ?? 0) - (other.sums[at] ?? 0);
            count += 1;
          }
        }
      }
      pads.push({ placed, off: count >= PAD_LEAST_UNITS ? sum / count : null });
    }
  }
  return pads;
}

function rowOf(course: readonly Placed[], plane: FacePlane): Row {
  const xs: Mm[] = [];
  const ys: Mm[] = [];
  const sums: Mm[] = [0];
  let sum = 0;
  let lowest = Number.POSITIVE_INFINITY;
  let highest = Number.NEGATIVE_INFINITY;
  for (const placed of course) {
    const x = middleX(placed);
    const y = middleY(placed);
    sum += placed.proud - plane.at(x, y);
    xs.push(x);
    ys.push(y);
    sums.push(sum);
    lowest = Math.min(lowest, y);
    highest = Math.max(highest, y);
  }
  return { placed: course, xs, ys, sums, lowest, highest };
}
