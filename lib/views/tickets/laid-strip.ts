import { ring } from '../../drawing/rings';
import { lines, type Shape } from '../../drawing/shape';
import type { Box } from '../../geometry/box';
import { clippedTo, type Point, type Ring, rectRing } from '../../geometry/polygon';
import type { Mm } from '../../units';
import type { Batch, Unit } from '../../wall/model';
import type { Placed, Survey } from '../../wall/survey';
import { faceOf } from '../unit-outline';
import { unitColours } from '../wall-colours';

/** A narrow strip of the wall from in front, and how high on the sheet the courses of a mixing stand in it. */
export interface LaidStrip {
  readonly shapes: readonly Shape[];
  readonly left: Mm;
  readonly reachOf: (batch: Batch) => { readonly low: Mm; readonly high: Mm };
}

/** Every course of the first panel, cut to a strip that fills `box`, but shows a whole unit of the wall across at least. */
export function laidStrip({ wall, panels }: Survey, box: Box): LaidStrip {
  const [survey] = panels;
  const courses = survey?.courses ?? [];
  const top = Math.max(...courses.flat().map(({ unit }) => unit.y + unit.height));
  const scale = Math.min(box.height / top, box.width / wall.family.length);
  const long = survey?.panel.length ?? 0;
  const width = Math.min(long, box.width / scale);
  const from = firstX(courses, long, width);
  const left = box.x + (box.width - width * scale) / 2;
  const foot = box.y + (box.height - top * scale) / 2;
  const place = ([x, y]: Point): Point => [left + (x - from) * scale, foot + y * scale];
  const seen = courses.flat().filter(({ unit }) => isIn(unit, from, width));
  const rings = (of: readonly Placed[], grow: Mm) =>
    of.map(({ unit }) => cutFace(unit, from, width, grow).map(place));
  const colours = unitColours(wall);
  return {
    shapes: [
      { kind: 'area', rings: rings(seen, wall.joint), fill: 'url:mortar' },
      ...colours.map((fill, shade): Shape => {
        const alike = seen.filter(({ unit }) => unit.shade === shade);
        return { kind: 'area', rings: rings(alike, 0), fill };
      }),
      { kind: 'area', rings: rings(seen, 0), fill: 'url:fleck' },
      ...[left, left + width * scale].map((x) =>
        lines([ring(x, foot, x, foot + top * scale)], {
          paint: '--slate',
          width: 1.2,
          thin: true,
          dash: [7, 4],
        }),
      ),
    ],
    left,
    reachOf: ({ fromCourse, toCourse }) => {
      const laid = courses.slice(fromCourse - 1, toCourse).flat();
      return {
        low: foot + scale * Math.min(...laid.map(({ unit }) => unit.y)),
        high: foot + scale * Math.max(...laid.map(({ unit }) => unit.y + unit.height)),
      };
    },
  };
}

/** The left end of the strip: of the wall's own left end and its middle, the one where more courses show. A gable steps in, a window does not. */
function firstX(courses: readonly (readonly Placed[])[], long: Mm, width: Mm): Mm {
  const shown = (from: Mm) =>
    courses.filter((course) => course.some(({ unit }) => isIn(unit, from, width))).length;
  const middle = (long - width) / 2;
  return shown(middle) > shown(0) ? middle : 0;
}

function isIn({ x, length }: Unit, from: Mm, width: Mm): boolean {
  return x < from + width && x + length > from;
}

/** The face of a unit as far as it lies in the strip; `grow` takes in the joints under it and to its right. */
function cutFace(unit: Unit, from: Mm, width: Mm, grow: Mm): Ring {
  const { x, y, length, height, fall } = unit;
  if (unit.cut !== undefined) return clippedTo(faceOf(unit), rectRing(from, y - height, width, 3 * height));
  const left = Math.max(x, from);
  const right = Math.min(x + length + grow, from + width);
  const under = (at: Mm): Mm => y - (fall * (at - x)) / length;
  return [
    [left, under(left) - grow],
    [right, under(right) - grow],
    [right, under(right) + height],
    [left, under(left) + height],
  ];
}
