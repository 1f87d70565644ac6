import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { isTall } from '../../wall/model';
import type { PanelSurvey, Placed } from '../../wall/survey';
import { boxOf } from '../places';
import type { Check } from '../sight';

/** Two closers are the same piece within this, mm. */
const SAME = 3;

/** Length of the smallest pieces. A closer at an end, corner or reveal that comes again two or three courses off is set out, not a sliver. */
export const sliverPiece: Check = {
  id: 'sliver-piece',
  measure: ({ wall, panels }, rules, see) => {
    const limit = limitOf(rules, 'smallest-piece');
    if (limit === undefined) return;
    const bound = boundAt(limit, { depth: wall.family.depth });
    for (const survey of panels) {
      for (const each of survey.placed) {
        // A soldier is a whole unit, stood on end.
        if (each.unit.kind === 'soldier' || isCloser(each, survey)) continue;
        see({
          limit,
          end: 'at least',
          measured: each.unit.length,
          bound,
          at: each.unit.id,
          place: () => ({ parts: [each.unit.id], region: boxOf([each]) }),
        });
      }
    }
  },
};

/** A piece at an end, corner or reveal, or beside a quoin or a soldier, that comes again two or three courses off, at the same place and length. */
export function isCloser(each: Placed, { courses }: PanelSurvey): boolean {
  const [atLeft, atRight] = [isEnd(each.left), isEnd(each.right)];
  if (!atLeft && !atRight) return false;
  return [-3, -2, 2, 3].some((away) =>
    (courses[each.unit.course - 1 + away] ?? []).some(
      (other) =>
        Math.abs(other.unit.length - each.unit.length) <= SAME &&
        ((atLeft && isEnd(other.left) && Math.abs(other.unit.x - each.unit.x) <= SAME) ||
          (atRight &&
            isEnd(other.right) &&
            Math.abs(other.unit.x + other.unit.length - each.unit.x - each.unit.length) <= SAME)),
    ),
  );
}

/** Where the bond ends: nothing beside in the course, or a unit that is not laid in the bond. */
function isEnd(beside: Placed | null): boolean {
  return beside === null || isTall(beside.unit);
}
