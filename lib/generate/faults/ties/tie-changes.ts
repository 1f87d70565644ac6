import type { Tie } from '../../../wall/model';
import { type CourseId, courseId, tieId } from '../../../wall/part-id';
import { NoRoom, type Spoiled, type SpoilInput } from '../../spoil-input';

/** Changes one tie that no other fault has touched. */
export function spoilTie({ wall, chance, taken }: SpoilInput, change: (tie: Tie) => Tie): Spoiled {
  const free = wall.ties.filter(({ id }) => !taken.some((spot) => spot.panel === id));
  if (free.length === 0) throw new NoRoom('no tie left');
  const tie = chance.pick(free);
  return {
    wall: { ...wall, ties: wall.ties.map((each) => (each === tie ? change(tie) : each)) },
    taken: { panel: tie.id, x: 0, y: 0, width: 0, height: 0 },
  };
}

/** Names ties afresh by course and place, so that a missing one leaves no gap in the numbers to give it away. */
export function renumbered(ties: readonly Tie[]): readonly Tie[] {
  const count = new Map<CourseId, number>();
  return ties.map((tie) => {
    const course = courseId(tie.panel, tie.course);
    const position = (count.get(course) ?? 0) + 1;
    count.set(course, position);
    return { ...tie, id: tieId(tie.panel, tie.course, position) };
  });
}
