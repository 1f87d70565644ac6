import { type Drawing, moved, type Shape } from '../../drawing/shape';
import { svgFile } from '../../drawing/svg-file';
import type { FailingWall } from '../../failing/state/model';
import type { LengthSystem } from '../../units';
import { surveyedWall } from '../../wall/surveyed';
import { frontView } from '../front/front';
import { UP_CLOSE, type ViewingConditions } from '../viewing-conditions';
import { wallColours } from '../wall-colours';
import { crackShapes } from './crack-shapes';
import { faceShapes } from './face-shapes';
import { movedWall } from './moved-wall';
import { zoneShapes } from './zone-shapes';

const WIDTH = 1200;

/** A failing wall from in front: its units where they have gone, what lies on them, what has come away, and its cracks as wide as they are. */
export function failingView(
  failing: FailingWall,
  system: LengthSystem,
  viewing: ViewingConditions = UP_CLOSE,
): Drawing {
  const drawing = frontView(surveyedWall(movedWall(failing)), system, viewing);
  const over = drawing.frames.flatMap(({ panel, x, y }) =>
    failingShapes(failing, panel).map((shape) => moved(shape, x, y)),
  );
  // Whoever points at a unit points at where it was laid: what has come away is found by the place that it left.
  const { spots } = frontView(surveyedWall(failing.survey.wall), system);
  const { box, shapes, labels, frames, haze } = drawing;
  const under = haze?.shapes ?? shapes.length;
  return {
    box,
    shapes: [...shapes.slice(0, under), ...over, ...shapes.slice(under)],
    labels,
    frames,
    spots,
    ...(haze ? { haze: { ...haze, shapes: under + over.length } } : {}),
  };
}

/** What has become of a panel, from back to front, in its own frame: what lies on it, what has gone from its faces, its cracks. */
export function failingShapes(failing: FailingWall, panel: string): readonly Shape[] {
  return [...zoneShapes(failing, panel), ...faceShapes(failing, panel), ...crackShapes(failing, panel)];
}

/** The front of a failing wall as a whole SVG file. */
export function failingSvg(failing: FailingWall, system: LengthSystem = 'mm'): string {
  return svgFile(failingView(failing, system), wallColours(failing.survey.wall), WIDTH);
}
