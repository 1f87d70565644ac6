import type { Area } from '../../drawing/shape';
import type { Unit } from '../../wall/model';
import type { PanelSurvey } from '../../wall/survey';
import type { Light } from '../viewing-conditions';
import { plainFace } from './joints';

/** Tones are drawn in steps of so much light, and below one step not at all: the eye does not see them. */
const STEP = 0.05;
const MOST = 0.5;

/**
 * Faces that are turned towards low light or away from it, lighter or darker as they catch more or less of it. What falls on a face
 * goes with the cosine between it and the sun (Lambert's law): a face that rises by `zx` a millimetre to the right and `zy` a
 * millimetre up catches 1 + zx × right − zy × down of what a flat one does, with the light's own two figures.
 */
export function frontTones({ placed }: PanelSurvey, light: Light): readonly Area[] {
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
