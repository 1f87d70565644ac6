import type { Mm } from '../units';
import type { Joint, Joints } from './joint';
import type { Frame } from './lens';
import { backFrom } from './picture';
import type { Mapping } from './reference';

/** A joint that the person sees in a photograph: the bed so many from the top, or in a course a head so many from the left; from 0. */
export type JointPlace = { readonly bed: number } | { readonly course: number; readonly head: number };

/** The joints with one of them moved across itself, mm down or to the right. From then on it is where a hand put it. */
export function movedBy(joints: Joints, place: JointPlace, by: Mm, frame: Frame, mapping: Mapping): Joints {
  const back = backFrom(frame, mapping);
  const shift = (joint: Joint, axis: 'x' | 'y'): Joint => ({
    byHand: true,
    cuts: joint.cuts.map(({ from, to }) => {
      const [first, last] = [mapping.toWall(from), mapping.toWall(to)];
      return {
        from: back({ ...first, [axis]: first[axis] + by }),
        to: back({ ...last, [axis]: last[axis] + by }),
      };
    }),
  });
  if ('bed' in place)
    return { ...joints, beds: joints.beds.map((bed, at) => (at === place.bed ? shift(bed, 'y') : bed)) };
  return {
    ...joints,
    heads: joints.heads.map((course, at) =>
      at === place.course
        ? course.map((head, index) => (index === place.head ? shift(head, 'x') : head))
        : course,
    ),
  };
}

/** The joints without one that is none. A bed taken out makes one course of two, whose heads nobody knows then. */
export function without(joints: Joints, place: JointPlace): Joints {
  if ('head' in place) {
    return {
      ...joints,
      heads: joints.heads.map((course, at) =>
        at === place.course ? course.filter((_, index) => index !== place.head) : course,
      ),
    };
  }
  const { bed } = place;
  const isEdge = bed === 0 || bed === joints.beds.length - 1;
  const gone = bed === 0 ? 0 : bed - 1;
  return {
    ...joints,
    beds: joints.beds.filter((_, at) => at !== bed),
    heads: joints.heads
      .filter((_, at) => at !== gone)
      .map((course, at) => (!isEdge && at === gone ? [] : course)),
  };
}
