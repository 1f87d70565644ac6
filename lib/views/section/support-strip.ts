import { lengthDimension } from '../../drawing/dimension';
import { ring } from '../../drawing/rings';
import { type Frame, type Label, lines, type Pieces, rect, type Shape } from '../../drawing/shape';
import type { Box } from '../../geometry/box';
import { formatLength, type LengthSystem, type Mm } from '../../units';
import { type Opening, topCourseOf, type Wall } from '../../wall/model';
import type { PanelSurvey } from '../../wall/survey';
import { frontJoints } from '../front/joints';
import { frontUnits } from '../front/units';
import { flashingAt } from './cut-parts';
import { flashingAlong } from './flashing';

/** A narrow picture of the face at another scale: where a support runs from and to. */
export interface Strip extends Pieces {
  readonly frame: Frame;
  readonly height: Mm;
}

/** Courses shown on the base: two, or as many as what stands in the first goes through. */
export function baseCourses({ courses }: PanelSurvey): number {
  return Math.max(2, ...(courses[0] ?? []).map(({ unit }) => topCourseOf(unit)));
}

/** Along the base: the ledges, and the first courses on them. */
export function baseStrip(wall: Wall, survey: PanelSurvey, x: Mm, top: Mm, width: Mm): Strip {
  const { panel } = survey;
  const ledges = survey.supports.filter(({ kind }) => kind === 'ledge');
  const from = Math.min(0, ...ledges.map(({ fromX }) => fromX));
  const to = Math.max(panel.length, ...ledges.map(({ toX }) => toX));
  const scale = width / (to - from);
  const deep = 170;
  const courses = baseCourses(survey);
  const high = courses * wall.gauge + 10;
  const frame: Frame = { panel: panel.id, x: x - from * scale, y: top - high * scale, scale };
  const shapes: Shape[] = [
    ...coursesOf(wall, survey, (course) => course <= courses),
    ...ledges.flatMap(({ fromX, toX, y: top, material }): readonly Shape[] => [
      rect(
        { x: fromX, y: top - deep, width: toX - fromX, height: deep },
        material === 'wood' ? 'url:wood' : 'url:concrete',
      ),
      lines([ring(fromX, top - deep, fromX, top, toX, top, toX, top - deep)], {
        paint: '#22272b',
        width: 1.5,
        thin: true,
      }),
    ]),
  ];
  return {
    shapes: shapes.map((shape) => scaled(shape, frame)),
    labels: [],
    frame,
    height: (deep + high) * scale,
  };
}

/** How much of the face is shown past a jamb, and past the unit at the end of a flashing, mm. */
const PAST_JAMB: Mm = 260;
const PAST_END: Mm = 20;

/** Over an opening, with the mortar pared off the steel: the whole lintel and how far it runs past each jamb. */
export function headStrip(
  wall: Wall,
  survey: PanelSurvey,
  opening: Opening,
  x: Mm,
  top: Mm,
  width: Mm,
  system: LengthSystem,
): Strip {
  const lintel = survey.supports.find((support) => support.opening === opening.id);
  const flashing = flashingAt(wall, survey, opening.x + opening.width / 2, opening.y + opening.height);
  const along = flashingAlong(wall, flashing, system);
  // As far as a flashing of a told shape goes, so that its ends are seen.
  const [left, right] = flashing?.shape ? [flashing.fromX, flashing.toX] : [opening.x, opening.x];
  const from = Math.min(opening.x - PAST_JAMB, left - wall.family.length - PAST_END);
  const to = Math.max(opening.x + opening.width + PAST_JAMB, right + wall.family.length + PAST_END);
  const scale = width / (to - from);
  const head = opening.y + opening.height;
  const below = 3 * wall.gauge;
  const frame: Frame = {
    panel: survey.panel.id,
    x: x - from * scale,
    y: top - (head + 3 * wall.gauge) * scale,
    scale,
  };
  const within = survey.placed.filter(({ unit }) => unit.x >= from - 1 && unit.x + unit.length <= to + 1);
  const near = { ...survey, placed: within };
  const clear: Box = { x: opening.x, y: head - below, width: opening.width, height: below };
  const shapes: Shape[] = [
    ...coursesIn(wall, near, head - below, head + 3 * wall.gauge),
    rect(clear, '--air'),
    lines(
      [
        ring(opening.x, head - below, opening.x, head),
        ring(opening.x + opening.width, head - below, opening.x + opening.width, head),
      ],
      { paint: '#22272b', width: 2, thin: true },
    ),
  ];
  const labels: Label[] = [
    {
      at: [opening.x + opening.width / 2, head - below * 0.3],
      text: `clear width ${formatLength(Math.round(opening.width), system)}`,
      anchor: 'middle',
      plate: true,
    },
  ];
  if (lintel !== undefined) {
    const thick = lintel.angle?.thickness ?? 8;
    const high = lintel.angle?.vertical ?? thick;
    shapes.push(
      rect(
        { x: lintel.fromX, y: lintel.y - thick, width: lintel.toX - lintel.fromX, height: high },
        '#6d7880',
        0.32,
      ),
      lines(
        [
          [
            [lintel.fromX, lintel.y],
            [lintel.fromX, lintel.y - thick + high],
            [lintel.toX, lintel.y - thick + high],
            [lintel.toX, lintel.y],
          ],
        ],
        { paint: '#22272b', width: 1.2, thin: true, dash: [6, 4] },
      ),
      rect(
        { x: lintel.fromX, y: lintel.y - thick, width: lintel.toX - lintel.fromX, height: thick },
        '#454f55',
      ),
    );
    const ends: readonly (readonly [Mm, Mm])[] = [
      [Math.min(lintel.fromX, opening.x), opening.x],
      [opening.x + opening.width, Math.max(lintel.toX, opening.x + opening.width)],
    ];
    for (const [left, right] of ends) {
      const level = head - below * 0.45;
      const { shapes: line, label } = lengthDimension(left, right, level, 16, 0, system);
      shapes.push(...line);
      labels.push({ ...label, at: [(left + right) / 2, level - below * 0.35], plate: true });
    }
  }
  return {
    shapes: [...shapes, ...along.shapes].map((shape) => scaled(shape, frame)),
    labels: [...labels, ...along.labels].map((label) => ({
      ...label,
      at: [frame.x + scale * label.at[0], frame.y + scale * label.at[1]],
    })),
    frame,
    height: (below + 3 * wall.gauge) * scale,
  };
}

function coursesOf(wall: Wall, survey: PanelSurvey, wanted: (course: number) => boolean): readonly Shape[] {
  const some = { ...survey, placed: survey.placed.filter(({ unit }) => wanted(unit.course)) };
  return [...frontJoints(wall, some), ...frontUnits(wall, some)];
}

function coursesIn(wall: Wall, survey: PanelSurvey, low: Mm, high: Mm): readonly Shape[] {
  const some = {
    ...survey,
    placed: survey.placed.filter(
      ({ unit }) => unit.y > low - 4 && unit.y + unit.height < high + wall.gauge / 2,
    ),
  };
  return [...frontJoints(wall, some), ...frontUnits(wall, some)];
}

/** A shape of the face brought to the sheet. Pens that are not thin shrink with it. */
export function scaled(shape: Shape, { x, y, scale }: Frame): Shape {
  const pen = shape.pen && !shape.pen.thin ? { ...shape.pen, width: shape.pen.width * scale } : shape.pen;
  const withPen = pen ? { pen } : {};
  if (shape.kind === 'dot') {
    return {
      ...shape,
      at: [x + scale * shape.at[0], y + scale * shape.at[1]],
      radius: shape.radius * scale,
      ...withPen,
    };
  }
  return {
    ...shape,
    rings: shape.rings.map((ring) => ring.map(([px, py]) => [x + scale * px, y + scale * py] as const)),
    ...withPen,
  };
}
