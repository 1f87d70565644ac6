import { boundAt } from '../../../limits/bound';
import { clearHeight, tellsDrainage, weepsOf } from '../../../wall/drainage';
import type { Check } from '../../check';
import { headBox } from '../../places';

/**
 * Walls that tell how they drain, each weep on each flashing: how high it is open, from the higher underside of the two units beside it to the
 * lower top, over the droppings on that flashing (their level within half a gauge of its own) that lie across the middle of the joint; against
 * `weep-size`. Parts: the head joint, the unit on its left, the one on its right.
 */
export const blockedWeep: Check = {
  id: 'blocked-weep',
  name: 'Blocked weep',
  alsoCalled:
    'clogged weep hole, weep filled with droppings, mortar behind the weep, plugged weep, weep that does not drain',
  looksLike: 'In an open slot right on the flashing you see mortar where it should be dark.',
  whereToLook:
    'Front view, close up, into each weep. In the section, droppings lie on the flashing behind it.',
  measuredBy:
    'Push a wire in at the top of the weep and see how much of its height goes through to the air space.',
  whyItMatters:
    'Droppings dam the water behind the wall until it stands as high as they do. It soaks the wall there and freezes.',
  putsRight:
    'While the mortar is green, the mason rakes it out through the weep and cleans the air space. Later a specialist opens the course from the face.',
  caughtAt: 'Before each lift, looking down the air space with a light',
  mistakenFor: ['weep-openings', 'open-head'],
  markedOn: ['head'],
  hazard: 'lets water in',
  reach: 'out of sight',
  lesson: 'keeping-water-out',
  asks: { what: 'Height of the weep that is open', unit: 'mm' },
  tooNear: 1,
  measure: (survey, limits, report) => {
    const limit = limits('weep-size');
    const { wall, panels } = survey;
    if (limit === undefined || !tellsDrainage(wall)) return;
    const bound = boundAt(limit, {});
    for (const panel of panels) {
      for (const flashing of wall.flashings) {
        if (flashing.panel !== panel.panel.id) continue;
        for (const weep of weepsOf(survey, panel, flashing)) {
          report({
            limit,
            end: 'at least',
            measured: clearHeight(wall, flashing, weep),
            bound,
            at: weep.id,
            place: () => ({
              parts: [weep.id, weep.left.unit.id, weep.right.unit.id],
              region: headBox(weep.left),
            }),
          });
        }
      }
    }
  },
};
