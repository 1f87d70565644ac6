import { type Point, type Ring, rectRing } from '../geometry/polygon';
import type { Mm } from '../units';
import { BRICK, GAUGE, JOINT } from './brickwork';
import { ring } from './rings';
import { type Area, lines, type Paint, type Pen, polygon, rect, type Shape } from './shape';

/** In a section x runs out of the wall to the right. The outline of what is cut: */
const CUT: Pen = { paint: '#22272b', width: 1.6 };
/** Sheathing and studs behind the air space, mm (common sizes). */
export const SHEATHING: Mm = 12;
export const STUD_DEEP: Mm = 140;
/** A concave joint is pressed in this far, mm. */
const TOOLED_IN: Mm = 4;

/** A thing cut through: hatched and outlined. */
export function cut(ring: Ring, fill: Paint): Area {
  return { kind: 'area', rings: [ring], fill, pen: CUT };
}

/** Mortar cut through, its face pressed in between `low` and `high`. */
export function cutMortar(back: Mm, face: Mm, low: Mm, high: Mm, tooledIn: Mm = TOOLED_IN): Area {
  const ring: Ring = [
    [back, low],
    [face, low],
    [face - tooledIn, (low + high) / 2],
    [face, high],
    [back, high],
  ];
  return { kind: 'area', rings: [ring], fill: 'url:mortar', pen: { paint: '#5c554c', width: 0.7 } };
}

/** Bricks one on another, cut through, each on its bed: the lowest bed starts at `low`. */
export function cutColumn(face: Mm, low: Mm, courses: number, depth: Mm = BRICK.depth): readonly Shape[] {
  return Array.from({ length: courses }, (_, course) => {
    const bed = low + course * GAUGE;
    return [
      cutMortar(face - depth, face, bed, bed + JOINT),
      cut(rectRing(face - depth, bed + JOINT, depth, BRICK.height), 'url:cut-brick'),
    ];
  }).flat();
}

/** Studs, sheathing and the water barrier on it, between two levels; `face` is where the air space begins. */
export function cutFrame(face: Mm, low: Mm, high: Mm): readonly Shape[] {
  const back = face - SHEATHING - STUD_DEEP;
  const upright = (x: Mm): Ring => ring(x, low, x, high);
  return [
    rect({ x: back, y: low, width: STUD_DEEP, height: high - low }, 'url:wood', 0.75),
    lines([upright(back), upright(face - SHEATHING)], { paint: '#22272b', width: 1 }),
    cut(rectRing(face - SHEATHING, low, SHEATHING, high - low), 'url:cut-wood'),
    lines([upright(face + 1)], { paint: '#2a5c8f', width: 2, dash: [14, 6] }),
  ];
}

/** A corrugated or flat strap: its foot on the sheathing at `face`, its tip in the bed. */
export function cutStrap(face: Mm, tip: Mm, y: Mm, thickness: Mm): readonly Shape[] {
  const foot: Ring = [
    [face, y + thickness / 2],
    [face, y + 38],
    [face + thickness, y + 38],
    [face + thickness, y + thickness / 2],
  ];
  return [
    polygon(foot, '--ink'),
    rect({ x: face, y: y - thickness / 2, width: tip - face, height: thickness }, '--ink'),
    { kind: 'dot', at: [face, y + 24], radius: 3.2, fill: '--ink' },
    lines([ring(tip, y - 5, tip, y + 5)], { paint: '--ink', width: 0.8 }),
  ];
}

/** A flashing: a dark sheet with a light line in it. */
export function sheetMetal(run: Ring): readonly Shape[] {
  return [lines([run], { paint: '--ink', width: 2.6 }), lines([run], { paint: '#8fa0a8', width: 0.9 })];
}

/** A wavy end where a thing goes on. */
export function breakLine(from: Mm, to: Mm, y: Mm): Area {
  const middle = (from + to) / 2;
  const points: readonly Point[] = [
    [from, y],
    [middle - 16, y],
    [middle - 7, y + 15],
    [middle + 7, y - 15],
    [middle + 16, y],
    [to, y],
  ];
  return lines([points], { paint: '--slate', width: 1.5, thin: true });
}
