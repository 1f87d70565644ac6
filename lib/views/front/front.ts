import { heightDimension, lengthDimension } from '../../drawing/dimension';
import { TEXT_SHARE } from '../../drawing/label-nodes';
import { ring } from '../../drawing/rings';
import { type Drawing, type Frame, type Label, lines, moved, rect, type Shape } from '../../drawing/shape';
import type { Box } from '../../geometry/box';
import type { LengthSystem, Mm } from '../../units';
import type { Panel } from '../../wall/model';
import type { PanelSurvey } from '../../wall/survey';
import type { SurveyedWall } from '../../wall/surveyed';
import { topOf } from '../course-rows';
import { faceSpots } from '../face-spots';
import { blurOf, lightOf, UP_CLOSE, type ViewingConditions } from '../viewing-conditions';
import { ridgeHeight } from './gable';
import { GROUND_HIGH, LEDGE_HIGH } from './ground';
import { panelShapes, shadowsOf } from './panel';
import { unitFaces } from './units';

/** Sky beside and above a panel, mm, and the margins that hold the dimension lines. */
const BESIDE: Mm = 130;
/** A roof runs out past the wall. */
const BESIDE_EAVES: Mm = 330;
const ABOVE: Mm = 150;
const MARGIN_LEFT: Mm = 230;
const MARGIN_BELOW: Mm = 260;
/** Between two panels of a corner. */
const BETWEEN: Mm = 300;

/** The wall from in front: its panels side by side, a return set off past a corner line. */
export function frontView(
  surveyed: SurveyedWall,
  system: LengthSystem,
  viewing: ViewingConditions = UP_CLOSE,
): Drawing {
  return frontOf(surveyed, system, true, viewing);
}

/** The wall from in front without dimensions, titles and margins: a picture that is shown small, on any page. */
export function frontPicture(surveyed: SurveyedWall): Drawing {
  return frontOf(surveyed, 'mm', false, UP_CLOSE);
}

function frontOf(
  { wall, panels: surveys, parts }: SurveyedWall,
  system: LengthSystem,
  measured: boolean,
  viewing: ViewingConditions,
): Drawing {
  const frames = framesOf(surveys);
  const tops = new Map(surveys.map((survey) => [survey.panel.id, topOf(survey)]));
  const ridge = Math.max(
    ...surveys.map((survey) => ridgeHeight(wall, survey, tops.get(survey.panel.id) ?? 0)),
  );
  const last = surveys[surveys.length - 1]?.panel;
  const end = (frames[frames.length - 1]?.x ?? 0) + (last?.length ?? 0);
  const low = -LEDGE_HIGH - GROUND_HIGH;
  const beside = surveys.some(({ panel }) => panel.gable !== null) ? BESIDE_EAVES : BESIDE;
  const text = (end + 2 * beside) * TEXT_SHARE;
  const above = surveys.length > 1 ? Math.max(ABOVE, 1.5 * text) : ABOVE;
  const marginLeft = Math.max(MARGIN_LEFT, 2.3 * text);
  const marginBelow = Math.max(MARGIN_BELOW, 2.3 * text);
  const picture: Box = { x: -beside, y: low, width: end + 2 * beside, height: ridge + above - low };
  const under: Shape[] = [rect(picture, '--sky')];
  const faces: Shape[] = [];
  const over: Shape[] = [];
  const measures: Shape[] = [];
  const labels: Label[] = [];
  const light = lightOf(viewing);
  const shadows = shadowsOf(wall, surveys, light);
  for (const [index, survey] of surveys.entries()) {
    const { panel } = survey;
    const x = frames[index]?.x ?? 0;
    const left = index === 0 ? beside : BETWEEN / 2;
    const right = index === surveys.length - 1 ? beside : BETWEEN / 2;
    const place = (shape: Shape): Shape => moved(shape, x, 0);
    const look = { top: tops.get(panel.id) ?? 0, left, right, light, shadows: shadows[index] ?? [] };
    const drawn = panelShapes(wall, survey, look);
    under.push(...drawn.under.map(place));
    faces.push(...unitFaces(survey).map(place));
    over.push(...drawn.over.map(place));
    const length = lengthDimension(
      x,
      x + panel.length,
      low - marginBelow * 0.36,
      34,
      -marginBelow * 0.36,
      system,
    );
    if (!measured) continue;
    measures.push(...length.shapes);
    labels.push({ ...length.label, room: panel.length });
  }
  const height = heightDimension(
    0,
    tops.get(surveys[0]?.panel.id ?? 'A') ?? 0,
    -beside - marginLeft * 0.28,
    34,
    marginLeft * 0.42,
    system,
  );
  over.push(...cornerLines(surveys, frames, low, ridge + above));
  const shapes = [...under, ...faces, ...over];
  if (measured) {
    measures.push(...height.shapes);
    labels.push(height.label, ...returnLabels(surveys, frames, ridge + above / 2, beside));
  }
  return {
    box: measured
      ? {
          x: picture.x - marginLeft,
          y: picture.y - marginBelow,
          width: picture.width + marginLeft,
          height: picture.height + marginBelow,
        }
      : picture,
    shapes: [...shapes, ...measures],
    labels,
    frames,
    faces: {
      first: under.length,
      parts: surveys.flatMap(({ placed }) => placed.map(({ unit }) => unit.id)),
    },
    ...(viewing.distance === 'near'
      ? {}
      : { haze: { blur: blurOf(viewing.distance), shapes: shapes.length } }),
    // Ties lie behind the veneer: nothing of them is seen from here.
    spots: faceSpots(parts, frames, (kind) => kind !== 'tie'),
  };
}

function framesOf(surveys: readonly PanelSurvey[]): readonly Frame[] {
  let x = 0;
  return surveys.map(({ panel }) => {
    const frame = { panel: panel.id, x, y: 0, scale: 1 };
    x += panel.length + BETWEEN;
    return frame;
  });
}

/** A panel that turns away from the viewer in plan. */
function isReturn({ plan }: Panel): boolean {
  return plan.leftZ !== plan.rightZ;
}

function cornerLines(
  surveys: readonly PanelSurvey[],
  frames: readonly Frame[],
  low: Mm,
  high: Mm,
): readonly Shape[] {
  return frames.slice(1).map(({ x }, index) => {
    const before = frames[index];
    const end = (before?.x ?? 0) + (surveys[index]?.panel.length ?? 0);
    const middle = (end + x) / 2;
    return lines([ring(middle, low, middle, high)], {
      paint: '--slate',
      width: 1.5,
      thin: true,
      dash: [10, 4, 2, 4],
    });
  });
}

function returnLabels(
  surveys: readonly PanelSurvey[],
  frames: readonly Frame[],
  y: Mm,
  beside: Mm,
): readonly Label[] {
  if (surveys.length < 2) return [];
  return surveys.flatMap(({ panel }, index): readonly Label[] => {
    const x = (frames[index]?.x ?? 0) + panel.length / 2;
    const text = isReturn(panel) ? `Return ${panel.id}` : `Wall ${panel.id}`;
    return [
      {
        at: [x, y],
        text,
        anchor: 'middle',
        ofLook: true,
        room: panel.length + 2 * Math.min(beside, BETWEEN / 2),
      },
    ];
  });
}
