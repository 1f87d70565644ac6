import type { LengthSystem, Mm } from '../units';
import { mirrored } from '../wall/mirror';
import type { Panel, Wall } from '../wall/model';
import { type PanelSurvey, surveyOf } from '../wall/survey';
import { heightDimension, lengthDimension } from './dimension';
import { faceSpots } from './face-spots';
import {
  flashingEdges,
  frontGround,
  GROUND_HIGH,
  gableBoards,
  LEDGE_HIGH,
  ridgeHeight,
} from './front-ground';
import { frontJoints } from './front-joints';
import { frontOpening } from './front-openings';
import { frontShadows } from './front-shadows';
import { frontUnits } from './front-units';
import { TEXT_SHARE } from './label-nodes';
import { blurOf, type Light, type Looking, lightOf, UP_CLOSE } from './looking';
import {
  type Box,
  type Drawing,
  type Frame,
  flipped,
  type Label,
  lines,
  moved,
  rect,
  type Shape,
} from './shape';

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
export function frontView(wall: Wall, system: LengthSystem, looking: Looking = UP_CLOSE): Drawing {
  return frontOf(wall, system, true, looking);
}

/** The wall from in front without dimensions, titles and margins: a picture that is shown small, on any page. */
export function frontPicture(wall: Wall): Drawing {
  return frontOf(wall, 'mm', false, UP_CLOSE);
}

function frontOf(wall: Wall, system: LengthSystem, measured: boolean, looking: Looking): Drawing {
  const surveys = surveyOf(wall).panels;
  const frames = framesOf(surveys);
  const tops = new Map(surveys.map((survey) => [survey.panel.id, topOf(survey)]));
  const ridge = Math.max(...surveys.map(({ panel }) => ridgeHeight(wall, panel, tops.get(panel.id) ?? 0)));
  const last = surveys[surveys.length - 1]?.panel;
  const end = (frames[frames.length - 1]?.x ?? 0) + (last?.length ?? 0);
  const low = -LEDGE_HIGH - GROUND_HIGH;
  const beside = surveys.some(({ panel }) => panel.gable !== null) ? BESIDE_EAVES : BESIDE;
  const text = (end + 2 * beside) * TEXT_SHARE;
  const above = surveys.length > 1 ? Math.max(ABOVE, 1.5 * text) : ABOVE;
  const marginLeft = Math.max(MARGIN_LEFT, 2.3 * text);
  const marginBelow = Math.max(MARGIN_BELOW, 2.3 * text);
  const picture: Box = { x: -beside, y: low, width: end + 2 * beside, height: ridge + above - low };
  const shapes: Shape[] = [rect(picture, '--sky')];
  const measures: Shape[] = [];
  const labels: Label[] = [];
  const light = lightOf(looking);
  const shadows = shadowsOf(wall, surveys, light);
  for (const [index, survey] of surveys.entries()) {
    const { panel } = survey;
    const x = frames[index]?.x ?? 0;
    const left = index === 0 ? beside : BETWEEN / 2;
    const right = index === surveys.length - 1 ? beside : BETWEEN / 2;
    shapes.push(
      ...panelShapes(wall, survey, {
        top: tops.get(panel.id) ?? 0,
        left,
        right,
        light,
        shadows: shadows[index] ?? [],
      }).map((shape) => moved(shape, x, 0)),
    );
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
    tops.get(surveys[0]?.panel.id ?? '') ?? 0,
    -beside - marginLeft * 0.28,
    34,
    marginLeft * 0.42,
    system,
  );
  shapes.push(...cornerLines(surveys, frames, low, ridge + above));
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
    ...(looking.distance === 'near'
      ? {}
      : { haze: { blur: blurOf(looking.distance), shapes: shapes.length } }),
    // Ties lie behind the veneer: nothing of them is seen from here.
    spots: faceSpots(wall, frames, (kind) => kind !== 'tie'),
  };
}

/** Shadows of each panel, in order. Light from the right: the shadows of the mirrored wall, mirrored back. */
function shadowsOf(wall: Wall, surveys: readonly PanelSurvey[], light: Light): readonly (readonly Shape[])[] {
  if (light.right >= 0) return surveys.map((survey) => frontShadows(survey, light));
  const others = new Map(surveyOf(mirrored(wall)).panels.map((survey) => [survey.panel.id, survey]));
  return surveys.map(({ panel }) => {
    const other = others.get(panel.id);
    if (other === undefined) return [];
    return frontShadows(other, { ...light, right: 0 - light.right }).map((shape) =>
      flipped(shape, panel.length),
    );
  });
}

interface PanelLook {
  readonly top: Mm;
  /** How far sky and ground run past its ends. */
  readonly left: Mm;
  readonly right: Mm;
  readonly light: Light;
  readonly shadows: readonly Shape[];
}

function panelShapes(
  wall: Wall,
  survey: PanelSurvey,
  { top, left, right, light, shadows }: PanelLook,
): readonly Shape[] {
  const gable = gableBoards(wall, survey.panel, top);
  return [
    ...gable.behind,
    ...frontGround(wall, survey.panel, left, right),
    // The dark of the frame shows through where no bed closes the head.
    ...survey.openings.map(({ x, y, width, height }) =>
      rect({ x, y, width, height: height + wall.gauge / 2 }, '#2a231d'),
    ),
    ...frontJoints(wall, survey, light),
    ...flashingEdges(wall, survey.panel),
    ...frontUnits(survey),
    ...shadows,
    ...survey.openings.flatMap((opening) => frontOpening(wall, opening, light)),
    ...gable.boards,
  ];
}

function framesOf(surveys: readonly PanelSurvey[]): readonly Frame[] {
  let x = 0;
  return surveys.map(({ panel }) => {
    const frame = { panel: panel.id, x, y: 0, scale: 1 };
    x += panel.length + BETWEEN;
    return frame;
  });
}

function topOf({ placed }: PanelSurvey): Mm {
  return placed.reduce((most, { unit }) => Math.max(most, unit.y + unit.height), 0);
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
    return lines(
      [
        [
          [middle, low],
          [middle, high],
        ],
      ],
      { paint: '--slate', width: 1.5, thin: true, dash: [10, 4, 2, 4] },
    );
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
    return [{ at: [x, y], text, anchor: 'middle', room: panel.length + 2 * Math.min(beside, BETWEEN / 2) }];
  });
}
