import { heightDimension, lengthDimension } from '../../drawing/dimension';
import type { NoteWish } from '../../drawing/note';
import { ring } from '../../drawing/rings';
import { scaleBar } from '../../drawing/scale-bar';
import { type Drawing, lines, type Pieces } from '../../drawing/shape';
import type { LengthSystem, Mm } from '../../units';
import type { Opening, Support } from '../../wall/model';
import type { PanelSurvey } from '../../wall/survey';
import type { SurveyedWall } from '../../wall/surveyed';
import { cutSupport, unitsCut } from './cut-parts';
import { cutFlashing } from './flashing';
import { frameUnder } from './opening-head';
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
import { headSpots } from './spots';
import { headStrip } from './support-strip';

const COURSES = 6;
const BELOW: Mm = 230;

/** A cut through the head of an opening: the steel with its legs, the units over it; below it the whole lintel from in front. */
export function headSection(
  surveyed: SurveyedWall,
  survey: PanelSurvey,
  opening: Opening,
  lintel: Support | null,
  system: LengthSystem,
): Drawing {
  const { wall } = surveyed;
  const x = opening.x + opening.width / 2 + 1;
  const head = opening.y + opening.height;
  const high = head + COURSES * wall.gauge + 6;
  const flashing = lintel === null ? null : cutFlashing(wall, survey, lintel, x, system);
  const body = cutWall(
    wall,
    survey,
    x,
    head,
    high,
    system,
    lintel === null ? [] : [steelNote(lintel, system), ...(flashing?.notes ?? [])],
  );
  const depth = depthDimensions(wall, high, system);
  const low = head - BELOW;
  const stripTop = low - 100;
  const strip = headStrip(
    wall,
    survey,
    opening,
    SHEET_LEFT + 30,
    stripTop,
    SHEET_RIGHT - SHEET_LEFT - 60,
    system,
  );
  const stripLow = stripTop - strip.height;
  const bar = scaleBar(NOTES, low + 20, 200, 12, system);
  const steel = lintel === null ? null : steelPieces(lintel, faceAt(survey, x, head), system);
  const seen: Drawing = {
    box: {
      x: SHEET_LEFT,
      y: stripLow - 40,
      width: SHEET_RIGHT - SHEET_LEFT,
      height: high + 150 - stripLow + 40,
    },
    shapes: [
      ...frameUnder(wall, head, low),
      ...body.shapes,
      goesOn(wall, high),
      ...(lintel === null ? [] : cutSupport(lintel, 0)),
      ...(flashing?.shapes ?? []),
      ...(steel?.shapes ?? []),
      ...depth.shapes,
      ...bar.shapes,
      ...strip.shapes,
    ],
    labels: [
      ...body.labels,
      ...(steel?.labels ?? []),
      ...depth.labels,
      ...strip.labels,
      bar.label,
      {
        at: [SHEET_LEFT + 30, stripTop + 44],
        text: `Over the ${opening.kind}, mortar pared back`,
        anchor: 'start',
        ofLook: true,
      },
    ],
    frames: [strip.frame],
    spots: headSpots(surveyed, survey, opening, lintel, strip.frame),
  };
  return seen;
}

/** How far the lowest unit over the opening stands out at the cut. */
function faceAt(survey: PanelSurvey, x: Mm, head: Mm): Mm {
  return unitsCut(survey, x).find(({ unit }) => unit.y > head - 5)?.unit.set ?? 0;
}

/** What the steel is, beside the notes of the ties. */
function steelNote({ y, back, angle, material }: Support, system: LengthSystem): NoteWish {
  const thick = angle?.thickness ?? 8;
  return {
    target: [back + thick / 2, y + (angle?.vertical ?? 20) * 0.62],
    y: y + 20,
    text: angle ? `angle ${length(thick, system)} thick` : material,
  };
}

function steelPieces(lintel: Support, face: Mm, system: LengthSystem): Pieces {
  const { y, back, front, angle } = lintel;
  const thick = angle?.thickness ?? 8;
  const overhang = lengthDimension(front, face, y - thick - 34, 9, 0, system);
  const leg = lengthDimension(back, front, y - thick - 84, 13, 0, system);
  const upright = angle
    ? heightDimension(y - thick, y - thick + angle.vertical, back - 22, 13, 0, system)
    : null;
  return {
    shapes: [
      lines([ring(face, y + 2, face, y - thick - 50)], MEASURED_FROM),
      lines(
        [ring(front, y - thick, front, y - thick - 96), ring(back, y - thick, back, y - thick - 96)],
        MEASURED_FROM,
      ),
      ...overhang.shapes,
      ...leg.shapes,
      ...(upright?.shapes ?? []),
    ],
    labels: [
      {
        ...overhang.label,
        at: [NOTES, y - thick - 34],
        anchor: 'start',
        text: `overhang here ${overhang.label.text}`,
        strong: true,
      },
      { ...leg.label, at: [NOTES, y - thick - 84], anchor: 'start', text: `leg ${leg.label.text}` },
      ...(upright
        ? [
            {
              ...upright.label,
              at: [back - 34, y - thick + (angle?.vertical ?? 0) / 2] as const,
              anchor: 'end' as const,
              upright: false,
              plate: true,
              text: `leg ${upright.label.text}`,
            },
          ]
        : []),
    ],
  };
}
