import type { FaceBox } from '../geometry/box';
import type { Mm } from '../units';
import { isTall, type Wall } from './model';
import {
  bedId,
  cornerId,
  courseId,
  endId,
  headId,
  type PanelId,
  type PartId,
  type PartKind,
} from './part-id';
import { headWidth, type PanelSurvey, type Placed, type Survey } from './survey';

/** A part of a wall that can be pointed at: its name, what it is, and its box on the face of its panel. */
export interface Part extends FaceBox {
  readonly id: PartId;
  readonly kind: PartKind;
  readonly panel: PanelId;
  readonly course: number | null;
}

/** Half the reach of a thin part (a tie, an edge, a corner) to either side, mm: something to point at. */
const THIN: Mm = 20;
/** The panel that every wall has: mixings are shown on it. */
const MAIN: PanelId = 'A';

/** Every part that can be marked, by id. Units come course by course from the bottom, each from the left. */
export function partsOf({ wall, panels }: Survey): ReadonlyMap<string, Part> {
  const parts: Part[] = [];
  for (const survey of panels) {
    for (const course of survey.courses) for (const placed of course) parts.push(...unitParts(placed));
    parts.push(...wideParts(survey));
    for (const tie of survey.ties) {
      parts.push(box(tie.id, 'tie', tie.panel, tie.course, tie.x - THIN, tie.y - THIN, 2 * THIN, 2 * THIN));
    }
    for (const { id, panel, x, y, width, height } of survey.openings) {
      parts.push(box(id, 'opening', panel, null, x, y, width, height));
    }
    for (const support of survey.supports) {
      const { id, panel, fromX, toX, y } = support;
      parts.push(box(id, 'support', panel, null, fromX, y - 2 * THIN, toX - fromX, 2 * THIN));
    }
  }
  for (let index = 1; index < wall.panels.length; index++) {
    const left = wall.panels[index - 1];
    const right = wall.panels[index];
    if (left?.rightEnd === 'corner' && right?.leftEnd === 'corner') {
      parts.push(
        box(cornerId(left.id, right.id), 'corner', right.id, null, 0, 0, 2 * THIN, heightOf(wall, right.id)),
      );
    }
  }
  const main = wall.panels.find(({ id }) => id === MAIN);
  for (const batch of wall.batches) {
    const from = (batch.fromCourse - 1) * wall.gauge;
    const height = (batch.toCourse - batch.fromCourse + 1) * wall.gauge;
    parts.push(box(batch.id, 'batch', MAIN, null, 0, from, main?.length ?? 0, height));
  }
  return new Map(parts.map((part) => [part.id, part]));
}

function unitParts(placed: Placed): readonly Part[] {
  const { unit, bed, right } = placed;
  const parts = [box(unit.id, 'unit', unit.panel, unit.course, unit.x, unit.y, unit.length, unit.height)];
  if (bed !== null) {
    const thick = Math.max(bed.left, bed.right);
    parts.push(
      box(bedId(unit.id), 'bed', unit.panel, unit.course, unit.x, unit.y - thick, unit.length, thick),
    );
  }
  if (right !== null) {
    const id = headId(unit.id, right.unit.position);
    const width = headWidth(unit, right.unit);
    // Beside a taller unit the joint is as high as the lower of the two.
    const high = isTall(unit) && !isTall(right.unit) ? right.unit.height : unit.height;
    parts.push(box(id, 'head', unit.panel, unit.course, unit.x + unit.length, unit.y, width, high));
  }
  return parts;
}

function wideParts({ panel, courses, placed }: PanelSurvey): readonly Part[] {
  const top = placed.reduce((most, { unit }) => Math.max(most, unit.y + unit.height), 0);
  const parts = [box(panel.id, 'panel', panel.id, null, 0, 0, panel.length, top)];
  for (const course of courses) {
    const first = course[0]?.unit;
    const last = course[course.length - 1]?.unit;
    if (first === undefined || last === undefined) continue;
    const id = courseId(panel.id, first.course);
    parts.push(
      box(
        id,
        'course',
        panel.id,
        first.course,
        first.x,
        first.y,
        last.x + last.length - first.x,
        first.height,
      ),
    );
  }
  if (panel.leftEnd === 'free')
    parts.push(box(endId(panel.id, 'left'), 'edge', panel.id, null, 0, 0, 2 * THIN, top));
  if (panel.rightEnd === 'free') {
    parts.push(
      box(endId(panel.id, 'right'), 'edge', panel.id, null, panel.length - 2 * THIN, 0, 2 * THIN, top),
    );
  }
  return parts;
}

function heightOf(wall: Wall, panel: PanelId): Mm {
  return wall.units.reduce(
    (most, unit) => (unit.panel === panel ? Math.max(most, unit.y + unit.height) : most),
    0,
  );
}

function box(
  id: PartId,
  kind: PartKind,
  panel: PanelId,
  course: number | null,
  x: Mm,
  y: Mm,
  width: Mm,
  height: Mm,
): Part {
  return { id, kind, panel, course, x, y, width, height };
}
