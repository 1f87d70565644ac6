import { expect, test } from 'vitest';
import { drawingOf } from '../../../lib/views/draw-view';
import { rakeOf } from '../../../lib/views/front/gable';
import { svgOf } from '../../../lib/views/print-svg';
import type { View } from '../../../lib/views/view';
import type { Wall } from '../../../lib/wall/model';
import { surveyOf } from '../../../lib/wall/survey';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { HAND_PANEL, handUnits, handWall } from './hand-wall';

const PLACES = [
  ['A1.1', 'A1.1', 90, 0],
  ['A1.2', 'A1.2', 0, 0],
  ['A1.3', 'A1.3', 0, 90],
  ['A2.2', 'A2.1', 90, 0],
  ['A2.3', 'A2.2', 0, 90],
  ['A3.2', 'A3.1', 90, 90],
] as const;

/** Courses of three, two and one, from 0, 105 and 210; gauge 70. Cut to the rake, or left in steps. */
function gable(isCut: boolean): Wall {
  const units = PLACES.flatMap(([from, id, left, right]) =>
    handUnits()
      .filter((unit) => unit.id === from)
      .map((unit) => ({
        ...unit,
        id,
        position: Number(id.slice(3)),
        ...(isCut && { cut: { left, right } }),
      })),
  );
  const panels = [{ ...HAND_PANEL, courses: 3, gable: { fromCourse: isCut ? 1 : 2, step: 105 } }];
  return handWall({ units, panels, ties: [] });
}

const rake = (wall: Wall) => {
  const [survey] = surveyOf(wall).panels;
  return survey ? rakeOf(wall, survey, 210) : null;
};

test('a cut rake goes along the feet of its courses; one in steps along their upper corners', () => {
  expect(rake(gable(true))).toEqual({ foot: 10, slope: 70 / 105, isCut: true });
  // Corners of the tops at (0, 70), (105, 140) and (210, 210).
  expect(rake(gable(false))).toEqual({ foot: 140, slope: 70 / 105, isCut: false });
  expect(rake(handWall())).toBeNull();
});

const drawn = (wall: Wall, view: View) => svgOf(surveyedWall(wall), view);

test('where the rake is cut no dark shows under the boards, and the peak is boarded', () => {
  const dark = '#3b3029';
  expect(drawn(gable(false), { kind: 'front' })).toContain(dark);
  expect(drawn(gable(true), { kind: 'front' })).not.toContain(dark);
});

// The slope of A1.1 rises 60 over 90.
test('a section through a slope is as high as the slope is there', () => {
  const highAt = (x: number) =>
    drawingOf(surveyedWall(gable(true)), { kind: 'side-section', panel: 'A', x }, 'mm').spots.find(
      ({ part }) => part === 'A1.1',
    )?.height;
  expect([30, 60, 90, 100].map(highAt)).toEqual([20, 40, 60, 60]);
});
