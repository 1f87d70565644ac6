import { darker } from '../../drawing/colours';
import { polygon, type Shape } from '../../drawing/shape';
import type { Point, Ring } from '../../geometry/polygon';
import type { Mm } from '../../units';
import type { Wall } from '../../wall/model';
import type { PanelSurvey } from '../../wall/survey';

const BOARD_WIDE: Mm = 170;
const EAVES: Mm = 230;
/** Between the brickwork of a gable and the board that covers its edge, square to the slope or nearly so. */
const POINTED: Mm = 9;
const CLEAR_OF_STEPS: Mm = 14;

/** A rake goes up by `slope` a millimetre from its foot at each end of the panel. */
export interface Rake {
  readonly foot: Mm;
  readonly slope: number;
  /** Its courses are cut along it; else they step in under it. */
  readonly isCut: boolean;
}

/** Null for an upright panel. A cut rake goes along the feet of its courses. */
export function rakeOf(wall: Wall, { panel, placed }: PanelSurvey, top: Mm): Rake | null {
  if (panel.gable === null) return null;
  const { fromCourse, step } = panel.gable;
  const slope = wall.gauge / step;
  const lowest = placed.find(({ unit }) => unit.cut !== undefined)?.unit;
  if (lowest !== undefined) return { foot: lowest.y, slope, isCut: true };
  return { foot: top - (panel.courses - fromCourse) * wall.gauge, slope, isCut: false };
}

/** How far above its bricks a gable is drawn, mm: its boards run on to the ridge. */
export function ridgeHeight(wall: Wall, survey: PanelSurvey, top: Mm): Mm {
  const rake = rakeOf(wall, survey, top);
  if (rake === null) return top;
  return rake.foot + rake.slope * (survey.panel.length / 2) + BOARD_WIDE * 1.6;
}

/** What is seen between a gable and its barge boards, and the boards, in front of nothing but air. Over the top course a boarded peak. */
export function gableBoards(
  wall: Wall,
  survey: PanelSurvey,
  top: Mm,
): { readonly behind: readonly Shape[]; readonly boards: readonly Shape[] } {
  const rake = rakeOf(wall, survey, top);
  if (rake === null) return { behind: [], boards: [] };
  const { length } = survey.panel;
  const middle = length / 2;
  const at = (x: Mm, up: Mm): Point => [x, rake.foot + rake.slope * x + up];
  const other = ([x, y]: Point): Point => [length - x, y];
  // Just outside the brickwork: along the cut, or past the outer upper corners of the steps.
  const under = rake.isCut ? POINTED : CLEAR_OF_STEPS;
  const board = (low: Mm, high: Mm): Ring => [
    at(-EAVES, low),
    at(middle, low),
    at(middle, high),
    at(-EAVES, high),
  ];
  const both = (low: Mm, high: Mm, fill: string, opacity?: number): readonly Shape[] => [
    polygon(board(low, high), fill, opacity),
    polygon(board(low, high).map(other), fill, opacity),
  ];
  const wide = BOARD_WIDE;
  const gap = [
    at(0, -wall.gauge),
    at(0, under),
    at(middle, under),
    other(at(0, under)),
    other(at(0, -wall.gauge)),
  ];
  return {
    behind: [polygon(gap, rake.isCut ? 'url:mortar' : '#3b3029')],
    boards: [
      ...(rake.isCut
        ? [peak(top, [at(middle, under), at((top - rake.foot) / rake.slope, under)], length)]
        : []),
      ...both(under, under + wide, '#e6e0d2'),
      ...both(under, under + 14, darker('#e6e0d2', 0.5), 0.8),
      ...both(under + wide * 0.62, under + wide * 0.66, darker('#e6e0d2', 0.4), 0.7),
      ...both(under + wide, under + wide + 52, '#4a4f55'),
    ],
  };
}

/** The board that closes the peak over the top course, on the mortar of its last bed. */
function peak(top: Mm, [ridge, [x]]: readonly [Point, Point], length: Mm): Shape {
  return polygon([[x - 20, top + POINTED], [length - x + 20, top + POINTED], ridge], darker('#e6e0d2', 0.14));
}
