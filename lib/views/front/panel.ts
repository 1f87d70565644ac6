import { flipped, rect, type Shape } from '../../drawing/shape';
import type { Mm } from '../../units';
import { mirrored } from '../../wall/mirror';
import type { Wall } from '../../wall/model';
import { type PanelSurvey, surveyOf } from '../../wall/survey';
import { DAYLIGHT, type Light } from '../viewing-conditions';
import { flashingEdges, frontGround, gableBoards } from './ground';
import { frontJoints } from './joints';
import { frontOpening } from './openings';
import { frontShadows } from './shadows';
import { frontTones } from './tones';
import { onFaces } from './units';

/** Shadows of each panel, in order. Light from the right: the shadows of the mirrored wall, mirrored back. */
export function shadowsOf(
  wall: Wall,
  surveys: readonly PanelSurvey[],
  light: Light,
): readonly (readonly Shape[])[] {
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

/** What of a panel lies under its units, and what over them. */
export function panelShapes(
  wall: Wall,
  survey: PanelSurvey,
  { top, left, right, light, shadows }: PanelLook,
): { readonly under: readonly Shape[]; readonly over: readonly Shape[] } {
  const gable = gableBoards(wall, survey.panel, top);
  const under = [
    ...gable.behind,
    ...frontGround(wall, survey.panel, left, right),
    // The dark of the frame shows through where no bed closes the head.
    ...survey.openings.map(({ x, y, width, height }) =>
      rect({ x, y, width, height: height + wall.gauge / 2 }, '#2a231d'),
    ),
    ...frontJoints(wall, survey, light),
    ...flashingEdges(wall, survey.panel),
  ];
  const over = [
    ...onFaces(wall, survey),
    ...(light === DAYLIGHT ? [] : frontTones(survey, light)),
    ...shadows,
    ...survey.openings.flatMap((opening) => frontOpening(wall, opening, light)),
    ...gable.boards,
  ];
  return { under, over };
}
