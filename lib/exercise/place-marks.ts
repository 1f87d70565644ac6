import { CATALOGUE } from '../inspect/catalogue';
import type { CheckId } from '../inspect/finding';
import { MOST_MARKS, MOST_NAMES_A_PART, type PlacedMark, type RawMark } from '../marking/mark';
import { courseId, isOfKind, type PartId } from '../wall/part-id';
import type { Part } from '../wall/parts';

/** Marks that mean nothing on a wall: the message says which mark and why. Nothing is graded. */
export class GradingError extends Error {
  override name = 'GradingError';
}

/** How sure a mark is that does not say. */
const FAIRLY_SURE = 2;

/**
 * Looks marks up on the wall: a fault of a whole panel or course is taken as marked on the whole of it.
 * @throws GradingError for a part that the wall does not have, and for too many marks, or names on one part.
 */
export function placeMarks(
  parts: ReadonlyMap<string, Part>,
  marks: readonly RawMark[],
): readonly PlacedMark[] {
  if (marks.length > MOST_MARKS) {
    throw new GradingError(`marks: ${marks.length} handed in, at most ${MOST_MARKS} can be`);
  }
  const names = new Map<PartId, Set<CheckId>>();
  return marks.map(({ part: id, fault, sure = FAIRLY_SURE }, index) => {
    const where = `marks.${index}`;
    const pointedAt = parts.get(id);
    if (pointedAt === undefined)
      throw new GradingError(`${where}.part: this wall has no part "${shortened(id)}"`);
    const part = wholeOf(pointedAt, fault, parts);
    const given = names.get(part.id) ?? new Set();
    names.set(part.id, given.add(fault));
    if (!isOfKind(part.id, 'panel') && given.size > MOST_NAMES_A_PART) {
      throw new GradingError(
        `${where}: part ${part.id} has more than ${MOST_NAMES_A_PART} different faults marked on it`,
      );
    }
    const { panel, x, y, width, height } = part;
    return { part: part.id, panel, x: x + width / 2, y: y + height / 2, fault, sure };
  });
}

function wholeOf(part: Part, fault: CheckId, parts: ReadonlyMap<string, Part>): Part {
  const { markedOn } = CATALOGUE[fault];
  if (markedOn.includes('panel')) return parts.get(part.panel) ?? part;
  if (markedOn.includes('course') && part.course !== null)
    return parts.get(courseId(part.panel, part.course)) ?? part;
  return part;
}

function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}
