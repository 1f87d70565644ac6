import { boundAt } from '../../../limits/bound';
import { meanLength } from '../../../wall/cut';
import { isTall, TALL_COURSES } from '../../../wall/model';
import type { PanelSurvey, Placed } from '../../../wall/survey';
import type { Check } from '../../check';
import { boxOf } from '../../places';

/** Two closers are the same piece within this, mm. */
const SAME = 3;

/**
 * Each unit's length against `smallest-piece` for the depth of the family; the length halfway up of a piece that is cut to a slope, which is
 * its area by its height: a triangle counts as half its foot. A soldier is a whole unit on end and is not asked; a closer is set out
 * so and is not asked either. A closer is a piece at the end of its run (beside a free end, a corner, an opening, a soldier or a quoin) that has
 * a piece of its own length, within 3 mm, at the same end, within 3 mm, two, three or six courses below or above: six, since long and short
 * quoins take turns. A rake moves with every course, so no piece there comes again: a short cut at a rake is a sliver.
 * Parts: the unit.
 */
export const sliverPiece: Check = {
  id: 'sliver-piece',
  name: 'Sliver',
  alsoCalled: 'short cut, small cut, tiny bat, narrow piece, thin cut piece',
  looksLike:
    'A very short piece with no partner in the courses near it is squeezed into a course, or runs to a point at a gable.',
  whereToLook:
    'Front view. Look beside openings, in the last space of a course and along the slope of a gable.',
  measuredBy:
    'Measure the length of the piece, halfway up where an end slopes, and compare it with how deep the unit is from front to back.',
  whyItMatters:
    'A small piece has little mortar to hold it and can work loose. Rain gets in at its close joints.',
  putsRight:
    'The mason uses larger cuts, or eases the space over many head joints, and lays that part anew. If it is loose over a door or path, keep people away.',
  caughtAt: 'When the first course is set out dry',
  mistakenFor: ['closers-at-reveal'],
  markedOn: ['unit'],
  hazard: 'lets water in',
  reach: 'in sight',
  lesson: 'setting-out-and-bond',
  asks: { what: 'Length of the piece', unit: 'mm' },
  tooNear: 2,
  measure: ({ wall, panels }, limits, report) => {
    const limit = limits('smallest-piece');
    if (limit === undefined) return;
    const bound = boundAt(limit, { depth: wall.family.depth });
    for (const survey of panels) {
      for (const each of survey.placed) {
        // A soldier is a whole unit, stood on end.
        if (each.unit.kind === 'soldier' || isCloser(each, survey)) continue;
        report({
          limit,
          end: 'at least',
          measured: meanLength(each.unit),
          bound,
          at: each.unit.id,
          place: () => ({ parts: [each.unit.id], region: boxOf([each]) }),
        });
      }
    }
  },
};

/** Courses away from a closer in which it may come again: by the bond, or as quoins of two sizes take turns. */
const AGAIN = [-2 * TALL_COURSES, -3, -2, 2, 3, 2 * TALL_COURSES] as const;

/** A piece at an end, corner or reveal, or beside a quoin or a soldier, that comes again a few courses off, at the same place and length. */
export function isCloser(each: Placed, { courses }: PanelSurvey): boolean {
  const [atLeft, atRight] = [isEnd(each.left), isEnd(each.right)];
  if (!atLeft && !atRight) return false;
  return AGAIN.some((away) =>
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
