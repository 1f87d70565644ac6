import { boundAt } from '../../../limits/bound';
import { bedId } from '../../../wall/part-id';
import type { Check } from '../../check';
import { bedBox, boxOf, joined } from '../../places';

/**
 * Each unit of at least half the length of its family, with a bed at both of its ends. A bed is the distance from the unit's underside down to
 * what is below at that x: of the units below that overlap it, the one that x lies in; over a head joint the nearer one (the left on a tie);
 * past their ends the nearest. The support that the unit rests on counts, at its own level, where no unit below reaches x. So the bed on the
 * ledge counts too. Nothing below at either end: no bed.
 *
 * Measured: the difference between the two ends, against `bed-taper`. Parts: the bed, the unit.
 */
export const taperingBed: Check = {
  id: 'tapering-bed',
  name: 'Bed joint tapers',
  alsoCalled: 'wedge joint, wedge-shaped bed, uneven bed, dipping brick, tipped brick',
  looksLike: 'The joint under one unit is a wedge, thick at one end and thin at the other.',
  whereToLook: 'Front view, close up, along the underside of single units.',
  measuredBy: 'Measure the bed joint at both ends of one unit and take the difference.',
  whyItMatters: 'The eye catches a wedge at once. The next course starts from a slope and carries it on.',
  putsRight:
    'While the mortar is fresh, the mason lifts the unit and beds it again. Later, the mason takes the course down to that place and lays it anew.',
  caughtAt: 'Before the next course is laid',
  mistakenFor: ['course-off-level', 'handmade-size-range'],
  markedOn: ['bed'],
  hazard: 'looks',
  reach: 'in sight',
  lesson: 'full-joints',
  asks: { what: 'Difference between the two ends of the bed', unit: 'mm' },
  tooNear: 0.5,
  measure: ({ wall, panels }, limits, report) => {
    const limit = limits('bed-taper');
    if (limit === undefined) return;
    const bound = boundAt(limit, {});
    for (const { placed } of panels) {
      for (const each of placed) {
        if (each.bed === null || each.unit.length < wall.family.length / 2) continue;
        const at = bedId(each.unit.id);
        report({
          limit,
          end: 'at most',
          measured: Math.abs(each.bed.left - each.bed.right),
          bound,
          at,
          place: () => ({ parts: [at, each.unit.id], region: joined([bedBox(each), boxOf([each])]) }),
        });
      }
    }
  },
};
