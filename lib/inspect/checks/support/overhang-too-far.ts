import { governingOverhang } from '../../../limits/bound';
import type { Check } from '../../check';
import { boxOf } from '../../places';

/**
 * Anchored walls, each support but of wood that a unit rests on: how far the face of the foremost of those units, at its middle, stands past the
 * front of the support. Against the stricter of `overhang-share` and `overhang-fixed` for the depth of the family.
 * Parts: the support, the units that rest on it.
 */
export const overhangTooFar: Check = {
  id: 'overhang-too-far',
  name: 'Overhangs too far',
  alsoCalled:
    'hangs off the ledge, overhanging brick, oversailing, past the foundation, past the shelf angle, projects past its support',
  looksLike: 'The bottom course reaches out past the edge of what it stands on, with a deep shadow below.',
  whereToLook: 'Section, at the ledge and at each lintel.',
  measuredBy: 'Measure from the front edge of the support to the face of the units that stand on it.',
  whyItMatters: 'Too little of the unit is held up. The base can crack, tip out and bring the wall down.',
  putsRight:
    'Keep people away. A licensed engineer decides whether the support is widened or the wall taken back. A contractor does the work.',
  caughtAt: 'When ledge and lintels are ready, before the first course',
  mistakenFor: ['overhang-within-a-third'],
  ofPanel: ['no-bearing-return'],
  markedOn: ['support'],
  hazard: 'could fall',
  reach: 'in sight',
  lesson: 'what-carries-the-wall',
  asks: { what: 'Overhang past the support', unit: 'mm' },
  tooNear: 1,
  measure: ({ wall, panels }, limits, report) => {
    if (wall.masonry !== 'anchored') return;
    const governing = governingOverhang(limits, wall.family.depth);
    if (governing === undefined) return;
    const { limit, bound } = governing;
    for (const { placed, supports } of panels) {
      for (const support of supports) {
        if (support.material === 'wood') continue;
        const resting = placed.filter((each) => each.support === support);
        if (resting.length === 0) continue;
        report({
          limit,
          end: 'at most',
          measured:
            resting.reduce((most, { unit }) => Math.max(most, unit.set), Number.NEGATIVE_INFINITY) -
            support.front,
          bound,
          at: support.id,
          place: () => ({
            parts: [support.id, ...resting.map(({ unit }) => unit.id)],
            region: boxOf(resting),
          }),
        });
      }
    }
  },
};
