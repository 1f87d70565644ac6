import { type Camera, cameraOf, usualFocal } from './camera';
import { jointsIn } from './find-joints';
import type { Joints } from './joint';
import type { Frame } from './lens';
import { PhotoError } from './photo-error';
import { type Picture, squareOn } from './picture';
import type { Parameter } from './propagate';
import { type Mapping, mappingAt, parametersOf, type Reference } from './reference';

/** The joints, and the reference as it has to be read: a photograph held on its side is turned by a quarter. */
export function findJoints(
  picture: Picture,
  reference: Reference,
): { readonly reference: Reference; readonly joints: Joints } {
  const jointsBy = (each: Reference) => ({
    reference: each,
    joints: jointsIn(squareOn(picture, nominal(picture, each).mapping)),
  });
  try {
    return jointsBy(reference);
  } catch (error) {
    if (!(error instanceof PhotoError) || reference.kind !== 'rectangle') throw error;
    const [first, second, third, fourth] = reference.corners;
    const turned = {
      ...reference,
      corners: [second, third, fourth, first] as const,
      width: reference.height,
      height: reference.width,
    };
    try {
      return jointsBy(turned);
    } catch {
      throw error;
    }
  }
}

/** The mapping that the numbers as given make, where the camera stood by it, and the numbers themselves. */
export function nominal(
  frame: Frame,
  reference: Reference,
): { readonly mapping: Mapping; readonly camera: Camera; readonly parameters: readonly Parameter[] } {
  const parameters = parametersOf(reference);
  const mapping = mappingAt(
    reference.kind,
    frame,
    1,
    parameters.map(({ value }) => value),
  );
  const focal = reference.kind === 'one length' ? reference.focal : usualFocal(frame);
  return { mapping, camera: cameraOf(frame, mapping.matrix, focal), parameters };
}
