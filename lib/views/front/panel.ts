import { type Area, flipped, rect, type Shape } from '../../drawing/shape';
import type { Mm } from '../../units';
import { mirrored } from '../../wall/mirror';
import type { Unit, Wall } from '../../wall/model';
import { type PanelSurvey, surveyOf } from '../../wall/survey';
import { DAYLIGHT, type Light } from '../viewing-conditions';
import { gableBoards } from './gable';
import { flashingEdges, frontGround } from './ground';
import { frontJoints, plainFace } from './joints';
import { frontOpening } from './openings';
import { frontShadows } from './shadows';
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
  const gable = gableBoards(wall, survey, top);
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

/** Tones are drawn in steps of so much light, and below one step not at all: the eye does not see them. */
const STEP = 0.05;
const MOST = 0.5;

/**
 * Faces that are turned towards low light or away from it, lighter or darker as they catch more or less of it. What falls on a face
 * goes with the cosine between it and the sun (Lambert's law): a face that rises by `zx` a millimetre to the right and `zy` a
 * millimetre up catches 1 + zx × right − zy × down of what a flat one does, with the light's own two figures.
 */
function frontTones({ placed }: PanelSurvey, light: Light): readonly Area[] {
  const steps = new Map<number, Unit[]>();
  for (const { unit } of placed) {
    const step = Math.round(caughtMore(unit, light) / STEP);
    if (step !== 0) steps.set(step, [...(steps.get(step) ?? []), unit]);
  }
  return [...steps]
    .sort(([a], [b]) => a - b)
    .map(([step, units]) => ({
      kind: 'area',
      rings: units.map(plainFace),
      fill: step > 0 ? '#fff3e0' : '#150b07',
      opacity: Math.min(MOST, Math.abs(step) * STEP),
    }));
}

/** How much more light a face catches than a flat one, as a share; negative: less. */
export function caughtMore(
  { twist, lean, length, height }: Pick<Unit, 'twist' | 'lean' | 'length' | 'height'>,
  { right, down }: Light,
): number {
  return (twist / length) * right - (lean / height) * down;
}
