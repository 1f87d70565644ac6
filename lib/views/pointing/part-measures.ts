import { formatLength, type LengthSystem, type Mm } from '../../units';
import { topLeft, topRight } from '../../wall/cut';
import type { Placed, Survey } from '../../wall/survey';
import { faceDepth } from '../unit-outline';
import { seenOn } from './condition-words';

/**
 * What the drawing of a unit shows, as a rule laid on it would read it, for a list: size, where its two ends stand against the face
 * line, and what is on its face. Measures to the whole millimetre; never whether they are right.
 */
export function unitMeasures({ panels }: Survey, system: LengthSystem): ReadonlyMap<string, string> {
  const placed = panels.flatMap((survey) => survey.placed);
  return new Map(placed.map((each) => [each.unit.id, measuresOf(each, system)]));
}

function measuresOf({ unit }: Placed, system: LengthSystem): string {
  const long = length(unit.length, system);
  const cut = unit.cut ? ` at the foot and ${length(topRight(unit) - topLeft(unit), system)} at the top` : '';
  const size = `${long}${cut} × ${length(unit.height, system)}`;
  const left = offLine(faceDepth(unit, 0, 0.5), system);
  const right = offLine(faceDepth(unit, 1, 0.5), system);
  const face = left === right ? `face ${left}` : `face: left end ${left}, right end ${right}`;
  const level = isNothing(unit.fall, system) ? '' : `, ${fallText(unit.fall, system)}`;
  return `${size}, ${face}${level}${seenOn(unit.condition)}`;
}

function fallText(fall: Mm, system: LengthSystem): string {
  return `${fall > 0 ? 'right' : 'left'} end ${length(Math.abs(fall), system)} lower`;
}

function offLine(set: Mm, system: LengthSystem): string {
  if (isNothing(set, system)) return 'on the line';
  return `${length(Math.abs(set), system)} ${set > 0 ? 'out from the line' : 'back from the line'}`;
}

/** Less than a rule shows: half a millimetre, or of a sixteenth of an inch. */
function isNothing(mm: Mm, system: LengthSystem): boolean {
  return length(Math.abs(mm), system) === length(0, system);
}

function length(mm: Mm, system: LengthSystem): string {
  return formatLength(system === 'mm' ? Math.round(mm) : mm, system);
}
