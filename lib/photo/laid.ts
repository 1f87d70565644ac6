import type { Mm } from '../units';
import type { Camera } from './camera';
import type { Cut, Joint, Joints } from './joint';
import type { Mapping } from './reference';
import { lineThrough, meanOf } from './rows';

/** A bed as numbers, mm: how far under the top of the rectangle it lies in the middle, how much it falls to the right for each mm, how thick it is. */
export interface Bed {
  readonly y: Mm;
  readonly fall: number;
  readonly width: Mm;
}

/** A head joint as numbers, mm: its middle from the left of the rectangle, and its width. */
export interface Head {
  readonly x: Mm;
  readonly width: Mm;
}

/** The wall as it was seen: beds from the top down, and the heads of each course between two of them from left to right. */
export interface Laid {
  readonly beds: readonly Bed[];
  readonly courses: readonly (readonly Head[])[];
}

/** What edges leave open: how much wider joints are than they look, and how deep mortar lies behind the face (mm), which hides part of it from aside. */
export interface Edges {
  readonly wider: Mm;
  readonly recess: Mm;
}

export function laidOf(joints: Joints, mapping: Mapping, camera: Camera, edges: Edges): Laid {
  const middle = mapping.width / 2;
  return {
    beds: joints.beds.map((joint) => {
      const strips = stripsOf(joint, mapping, camera, edges, 'y');
      const line = lineThrough(strips.map(({ along, across }) => ({ x: along, y: across })));
      return {
        y: line.y + line.slope * (middle - line.x),
        fall: line.slope,
        width: meanOf(strips.map(({ width }) => width)),
      };
    }),
    courses: joints.heads.map((course) =>
      course.map((joint) => {
        const strips = stripsOf(joint, mapping, camera, edges, 'x');
        return {
          x: meanOf(strips.map(({ across }) => across)),
          width: meanOf(strips.map(({ width }) => width)),
        };
      }),
    ),
  };
}

export interface Strip {
  readonly along: Mm;
  readonly across: Mm;
  readonly width: Mm;
}

/** The strips of a joint on the wall, in mm; `axis` is the one across it. */
export function stripsOf(
  { cuts }: Joint,
  mapping: Mapping,
  camera: Camera,
  edges: Edges,
  axis: 'x' | 'y',
): readonly Strip[] {
  const other = axis === 'x' ? 'y' : 'x';
  return cuts.map(({ from, to }: Cut) => {
    const [first, last] = [mapping.toWall(from), mapping.toWall(to)];
    const across = (first[axis] + last[axis]) / 2;
    const aside = Math.abs(across - camera.foot[axis]) / camera.distance;
    return {
      along: (first[other] + last[other]) / 2,
      across,
      width: last[axis] - first[axis] + edges.wider + edges.recess * aside,
    };
  });
}
