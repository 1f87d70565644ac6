import { SLOT } from '../../drawing/colours';
import { type Drawing, rect, type Shape, type Spot } from '../../drawing/shape';
import type { LengthSystem, Mm } from '../../units';
import { type Opening, type Tie, topCourseOf, type Unit, type Wall } from '../../wall/model';
import { headId } from '../../wall/part-id';
import { headWidth, type PanelSurvey, type Placed } from '../../wall/survey';
import type { SurveyedWall } from '../../wall/surveyed';
import { courseRows, type InCourse } from '../course-rows';
import { caliper } from '../pointing/part-readouts';
import { cutFill } from '../section/cut-parts';
import { length } from '../section/sheet';
import { type View, ViewError } from '../view';
import { planBacking, planBox, planDepth, planLine, planOpening, planUnit } from './parts';
import { breaksIn, type PlanPiece, planInStrips, type Strip, stripsOf } from './strips';

/** A tooled joint lies this far behind the face in plan, mm. */
const TOOLED_IN: Mm = 4;
/** Room in front of the face, mm. */
const BEFORE: Mm = 40;

/**
 * One course from above, those over it taken away: faces against the line, head joints, straps where they lie in the bed, air space
 * and backing. All at one scale; a long wall in strips.
 */
export function aboveView(
  { wall, panels }: SurveyedWall,
  { panel: id, course }: Extract<View, { kind: 'above' }>,
  system: LengthSystem,
): Drawing {
  const survey = panels.find(({ panel }) => panel.id === id);
  const laid = survey?.courses[course - 1] ?? [];
  if (survey === undefined || laid.length === 0)
    throw new ViewError(`above: wall "${id}" has no course ${course}`);
  const middle = meanLevel(laid);
  const units = courseRows(survey)[course - 1] ?? [];
  const openings = survey.openings.filter(({ y, height }) => middle > y && middle < y + height);
  const filled = new Map(wall.heads.map((head) => [head.joint, head.filled]));
  const ties = survey.ties.filter((tie) => tie.course === course);
  const strips = stripsOf(0, survey.panel.length, breaksIn(units));
  const seen = planInStrips({
    strips,
    behind: planDepth(wall),
    before: BEFORE,
    backing: ({ from, to }) => planBacking(wall, survey, from, to),
    pieces: [
      ...strips.flatMap((strip) => openings.flatMap((opening) => openingPiece(wall, opening, strip))),
      ...units.map((standing) => unitPiece(wall, survey, standing, course, filled)),
      ...ties.map((tie) => tiePiece(wall, tie, system)),
      ...strips.map(({ from, to }): PlanPiece => ({ middle: (from + to) / 2, shapes: [planLine(from, to)] })),
    ],
    title: `Course ${course} of wall ${id} from above`,
    from: (x) => length(Math.round(x), system),
  });
  return { ...seen, frames: [] };
}

function meanLevel(units: readonly Placed[]): Mm {
  return units.reduce((sum, { unit }) => sum + unit.y + unit.height / heightsIn(unit) / 2, 0) / units.length;
}

/** Courses that a unit stands through. */
function heightsIn(unit: Unit): number {
  return topCourseOf(unit) - unit.course + 1;
}

function openingPiece(wall: Wall, opening: Opening, { from, to }: Strip): readonly PlanPiece[] {
  const x = Math.max(from, opening.x);
  const width = Math.min(to, opening.x + opening.width) - x;
  if (width <= 0) return [];
  return [
    {
      middle: x + width / 2,
      shapes: planOpening(wall, opening, from, to),
      spots: [{ part: opening.id, x, y: 0, width, height: wall.family.depth }],
    },
  ];
}

/** A unit and the joint to its right. What stands on through the courses over this one is cut at its level. */
function unitPiece(
  wall: Wall,
  { panel }: PanelSurvey,
  { placed, unit, right }: InCourse,
  course: number,
  filled: ReadonlyMap<string, number>,
): PlanPiece {
  const spots: Spot[] = [{ part: unit.id, ...planBox(unit) }];
  const up = (course - unit.course + 1) / heightsIn(unit);
  const shapes: Shape[] = [...planUnit(unit, up, up < 1 ? cutFill(wall, unit) : undefined)];
  if (right !== null) {
    // Beside what stands through from below, the joint has no name of its own in this course.
    const id = placed.right === right ? headId(unit.id, right.unit.position) : null;
    const face = Math.min(unit.set, right.unit.set) - (panel.profile === 'raked' ? panel.recess : 0);
    const front = panel.profile === 'concave' ? face - TOOLED_IN : face;
    const joint = {
      x: unit.x + unit.length,
      y: 0 - front,
      width: headWidth(unit, right.unit),
      height: unit.depth - unit.set + front,
    };
    const share = (id === null ? undefined : filled.get(id)) ?? 100;
    shapes.unshift(rect(joint, share >= 100 ? 'url:mortar' : SLOT));
    // Half full: the mortar lies deep in the joint.
    if (share > 0 && share < 100) shapes.push(rect(joint, 'url:mortar', 0.35));
    if (id !== null) spots.push({ part: id, ...joint });
  }
  return { middle: unit.x + unit.length / 2, shapes, spots };
}

function tiePiece(wall: Wall, tie: Tie, system: LengthSystem): PlanPiece {
  const back = wall.family.depth + wall.cavity;
  const tip = wall.family.depth - tie.embedment;
  const box = { x: tie.x - tie.width / 2, y: tip, width: tie.width, height: back - tip };
  return {
    middle: tie.x,
    shapes: [
      rect({ ...box, x: box.x + 2, y: box.y - 2 }, '#1a1310', 0.4),
      { ...rect(box, '#aeb8bd'), pen: { paint: '#30383d', width: 1 } },
    ],
    labels: [
      {
        at: [tie.x, back + 60],
        text: `${length(tie.embedment, system)} in the bed, ${caliper(tie.thickness, system)}`,
        anchor: 'middle',
        plate: true,
        room: 800,
      },
    ],
    spots: [{ part: tie.id, ...box }],
  };
}
