import { boundAt } from '../../../limits/bound';
import { isWeep } from '../../../wall/drainage';
import { headId } from '../../../wall/part-id';
import type { Check } from '../../check';
import { headBox } from '../../places';

/**
 * Each head joint that the wall lists as filled in part, against `head-fill`. A weep is meant to be open and is passed over: it holds no mortar
 * at all, its course is the first on a flashing (its underside is no lower than the flashing and less than half a gauge over it), and the
 * joint lies within the flashing's length. Parts: the head, the left unit, the right one.
 */
export const openHead: Check = {
  id: 'open-head',
  name: 'Open head joint',
  alsoCalled:
    'bee hole, unfilled perp, open perpend, open cross joint, pinhole, clip joint, tip-buttered, vertical joint not filled',
  looksLike: 'A dark slot or hole shows between two units of one course.',
  whereToLook: 'Front view, close up. Behind a lifted unit you see how far the gap goes in.',
  measuredBy: 'Probe the joint, or lift the unit beside it, and judge what share of it is filled.',
  whyItMatters:
    'Wind drives rain straight through an open head joint. Frost then breaks the mortar around it.',
  putsRight:
    'The mason rakes the joint out, packs it with mortar in layers and tools it. Leave weeps open. A whole panel of open joints has to be rebuilt.',
  caughtAt: 'As each course is laid; in depth, when a unit is lifted',
  mistakenFor: ['weep-openings'],
  markedOn: ['head'],
  hazard: 'lets water in',
  reach: 'out of sight',
  lesson: 'full-joints',
  asks: { what: 'Share of the joint that is filled', unit: '%' },
  tooNear: 3,
  measure: (survey, limits, report) => {
    const limit = limits('head-fill');
    if (limit === undefined || survey.wall.heads.length === 0) return;
    const bound = boundAt(limit, {});
    const filled = new Map(survey.wall.heads.map((head) => [head.joint, head.filled]));
    for (const { placed } of survey.panels) {
      for (const left of placed) {
        const { right } = left;
        if (right === null) continue;
        const at = headId(left.unit.id, right.unit.position);
        const measured = filled.get(at);
        if (measured === undefined || (measured === 0 && isWeep(survey, left, right))) continue;
        report({
          limit,
          end: 'at least',
          measured,
          bound,
          at,
          place: () => ({ parts: [at, left.unit.id, right.unit.id], region: headBox(left) }),
        });
      }
    }
  },
};
