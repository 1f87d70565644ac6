import { breakLine, cutFrame, SHEATHING, STUD_DEEP } from '../../drawing/cut';
import { lengthDimension } from '../../drawing/dimension';
import { type NoteWish, notesApart } from '../../drawing/note';
import { type Pen, type Pieces, rect, type Shape } from '../../drawing/shape';
import { formatInches, formatMm, type LengthSystem, type Mm } from '../../units';
import { heightAt } from '../../wall/cut';
import type { Wall } from '../../wall/model';
import type { PanelSurvey } from '../../wall/survey';
import { cutBed, cutTie, cutUnit, framesFace, unitsCut } from './cut-parts';

/** Sheet of a section: z = 0 is the face line; notes stand to the right of it. */
export const SHEET_LEFT: Mm = -360;
export const SHEET_RIGHT: Mm = 560;
export const NOTES: Mm = 150;

/** A line that something is measured from. */
export const MEASURED_FROM: Pen = { paint: '--slate', width: 1, thin: true, dash: [5, 3] };

export function length(mm: Mm, system: LengthSystem): string {
  return system === 'mm' ? formatMm(mm) : formatInches(mm);
}

/** Backing, air space, units, beds and the ties near the cut, from one level to another; `others` are notes that stand among theirs. */
export function cutWall(
  wall: Wall,
  survey: PanelSurvey,
  x: Mm,
  low: Mm,
  high: Mm,
  system: LengthSystem,
  others: readonly NoteWish[] = [],
): Pieces {
  const cut = unitsCut(survey, x).filter(
    ({ unit }) => unit.y > low - 5 && unit.y + heightAt(unit, x) < high + 1,
  );
  const half = halfStud(survey.panel.studs);
  const ties = survey.ties.filter((tie) => Math.abs(tie.x - x) <= half && tie.y > low && tie.y < high);
  const face = framesFace(wall);
  const said = ties.map(
    (tie): NoteWish => ({
      target: [Math.min(-12, -wall.family.depth + tie.embedment), tie.y],
      y: tie.y,
      text: `tie, bedded ${length(tie.embedment, system)}`,
    }),
  );
  const notes = notesApart([...said, ...others], NOTES);
  return {
    shapes: [
      rect({ x: face, y: low, width: wall.cavity, height: high - low }, '--air'),
      ...cutFrame(face, low, high),
      ...cut.flatMap((placed) => cutBed(survey, placed, x)),
      ...cut.map(({ unit }) => cutUnit(wall, unit, x)),
      ...ties.flatMap((tie) => cutTie(wall, tie)),
      ...notes.flatMap(({ shapes }) => shapes),
    ],
    labels: notes.map(({ label }) => label),
  };
}

/** Depth of the units and width of the air space, above the top of the cut. */
export function depthDimensions(wall: Wall, top: Mm, system: LengthSystem): Pieces {
  const { depth } = wall.family;
  const unit = lengthDimension(-depth, 0, top + 40, 13, 0, system);
  const air = lengthDimension(-depth - wall.cavity, -depth, top + 92, 13, 0, system);
  return {
    shapes: [...unit.shapes, ...air.shapes],
    labels: [
      { ...unit.label, at: [26, top + 40], anchor: 'start', text: `unit ${unit.label.text}` },
      { ...air.label, at: [26 - depth, top + 92], anchor: 'start', text: `air space ${air.label.text}` },
    ],
  };
}

/** The wall goes on past the top of a cut. */
export function goesOn(wall: Wall, high: Mm): Shape {
  return breakLine(framesFace(wall) - SHEATHING - STUD_DEEP - 12, 24, high);
}

/** Half the commonest distance between studs; a tie further away belongs to another cut. */
export function halfStud(studs: readonly Mm[]): Mm {
  const gaps = studs.slice(1).map((stud, index) => stud - (studs[index] ?? 0));
  return gaps.length === 0 ? 0 : Math.max(...gaps) / 2;
}
