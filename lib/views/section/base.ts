import { lengthDimension } from '../../drawing/dimension';
import { noteTo } from '../../drawing/note';
import { ring } from '../../drawing/rings';
import { scaleBar } from '../../drawing/scale-bar';
import { type Drawing, lines, rect, type Shape } from '../../drawing/shape';
import type { LengthSystem, Mm } from '../../units';
import { type Support, topCourseOf, type Wall } from '../../wall/model';
import type { PanelSurvey } from '../../wall/survey';
import type { SurveyedWall } from '../../wall/surveyed';
import { cutSupport, unitsCut } from './cut-parts';
import { cutFlashing } from './flashing';
import {
  cutWall,
  depthDimensions,
  goesOn,
  length,
  MEASURED_FROM,
  NOTES,
  SHEET_LEFT,
  SHEET_RIGHT,
} from './sheet';
import { baseSpots, LEDGE_DEEP } from './spots';
import { baseStrip } from './support-strip';

/** So many courses stand on the ledge in the cut: enough for a first row of ties. */
const COURSES = 8;
const GROUND: Mm = -170;

/** A cut through the base: ledge, flashing, first courses, air space and backing; below it the whole base, seen from in front. */
export function baseSection(
  { wall, parts }: SurveyedWall,
  survey: PanelSurvey,
  ledge: Support,
  system: LengthSystem,
): Drawing {
  const x = cutPlace(survey, ledge);
  const first = unitsCut(survey, x)[0]?.unit;
  const face = first?.set ?? 0;
  const high = topOfCut(wall, survey, x);
  const flashing = cutFlashing(wall, survey, ledge, x, system);
  const body = cutWall(wall, survey, x, 0, high, system, flashing.notes);
  const depth = depthDimensions(wall, high, system);
  const overhang = lengthDimension(ledge.front, face, ledge.y - 52, 9, 0, system);
  const ledgeNote = noteTo(
    [ledge.front - 30, ledge.y - 120],
    NOTES,
    ledge.y - 120,
    `${ledge.material} ledge`,
  );
  const stripTop = -LEDGE_DEEP - 110;
  const strip = baseStrip(wall, survey, SHEET_LEFT + 30, stripTop, SHEET_RIGHT - SHEET_LEFT - 60);
  const stripLow = stripTop - strip.height;
  const bar = scaleBar(NOTES, -LEDGE_DEEP + 20, 200, 12, system);
  const cutAt = strip.frame.x + strip.frame.scale * x;
  return {
    box: {
      x: SHEET_LEFT,
      y: stripLow - 40,
      width: SHEET_RIGHT - SHEET_LEFT,
      height: high + 150 - stripLow + 40,
    },
    shapes: [
      ...cutFoundation(ledge),
      ...body.shapes,
      goesOn(wall, high),
      ...flashing.shapes,
      ...depth.shapes,
      lines([ring(face, ledge.y + 4, face, ledge.y - 70)], MEASURED_FROM),
      ...overhang.shapes,
      ...ledgeNote.shapes,
      ...bar.shapes,
      ...strip.shapes,
      lines([ring(cutAt, stripLow - 18, cutAt, stripLow + strip.height + 18)], {
        paint: '--chalk',
        width: 2,
        thin: true,
        dash: [10, 4, 2, 4],
      }),
    ],
    labels: [
      ...body.labels,
      ...depth.labels,
      {
        ...overhang.label,
        at: [NOTES, ledge.y - 52],
        anchor: 'start',
        text: `overhang here ${overhang.label.text}`,
        strong: true,
      },
      ledgeNote.label,
      bar.label,
      {
        at: [SHEET_LEFT + 30, stripTop + 44],
        text: `Along the base of wall ${survey.panel.id}, cut at ${length(Math.round(x), system)}`,
        anchor: 'start',
      },
    ],
    frames: [strip.frame],
    spots: baseSpots(parts, survey, strip.frame, ledge),
  };
}

/** As high as the courses of the cut, or as the unit that stands through the last of them. */
function topOfCut(wall: Wall, survey: PanelSurvey, x: Mm): Mm {
  const last = unitsCut(survey, x).findLast(({ unit }) => unit.course <= COURSES)?.unit;
  const courses = last === undefined ? COURSES : Math.max(COURSES, topCourseOf(last));
  return courses * wall.gauge + 6;
}

/** A cut ledge, the foundation behind it and the ground before it. */
export function cutFoundation(ledge: Support): readonly Shape[] {
  return [
    rect(
      { x: ledge.front, y: -LEDGE_DEEP, width: 130 - ledge.front, height: LEDGE_DEEP + GROUND },
      'url:earth',
    ),
    lines([ring(ledge.front, GROUND, 130, GROUND)], { paint: '#3c3226', width: 3 }),
    rect(
      { x: SHEET_LEFT + 40, y: -LEDGE_DEEP, width: ledge.back - SHEET_LEFT - 40, height: LEDGE_DEEP },
      'url:concrete',
      0.45,
    ),
    ...cutSupport(ledge, LEDGE_DEEP),
  ];
}

/** Where to cut: at the stud nearest the middle of the ledge that no opening stands on. */
function cutPlace({ panel, openings }: PanelSurvey, { fromX, toX }: Support): Mm {
  const middle = (Math.max(0, fromX) + Math.min(panel.length, toX)) / 2;
  const clear = (x: Mm): boolean =>
    x > fromX &&
    x < toX &&
    openings.every((opening) => opening.y > 600 || x < opening.x || x > opening.x + opening.width);
  const studs = panel.studs.filter(clear);
  if (studs.length === 0) return middle;
  return studs.reduce((best, stud) => (Math.abs(stud - middle) < Math.abs(best - middle) ? stud : best));
}
