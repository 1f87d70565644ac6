import { boundAt } from '../../../limits/bound';
import type { Check } from '../../check';
import { alongFlashing, flashingsOf } from './flashings';

/**
 * Walls that tell how they drain, each flashing of a told shape on a support that is not of wood (as for no-flashing): how far it goes up the
 * backing, against `flashing-upstand`. Parts: those supports.
 */
export const lowFlashing: Check = {
  id: 'low-flashing',
  name: 'Flashing not turned up far enough',
  alsoCalled:
    'flashing too short at the back, no upstand, tray too low, flashing stops in the air space, upturn too small',
  looksLike: 'Behind the units, the sheet ends low on the backing.',
  whereToLook: 'Section through the base and over each opening.',
  measuredBy:
    'Measure up the backing from the level at which the flashing leaves the wall to its upper edge.',
  whyItMatters:
    'Droppings and driven water come over its upper edge. They run down behind it and into the frame.',
  putsRight:
    'Before it is covered, the flashing is changed for a wider one that goes up under the water barrier. Later a specialist opens the wall for it.',
  caughtAt: 'When the flashing is in, before brick hides it',
  mistakenFor: ['short-flashing', 'no-flashing'],
  markedOn: ['support'],
  hazard: 'lets water in',
  reach: 'out of sight',
  lesson: 'keeping-water-out',
  asks: { what: 'How far the flashing goes up the backing', unit: 'mm' },
  tooNear: 2,
  measure: (survey, limits, report) => {
    const limit = limits('flashing-upstand');
    if (limit === undefined) return;
    const bound = boundAt(limit, {});
    for (const laid of flashingsOf(survey)) {
      const [first] = laid.under;
      if (first === undefined) continue;
      report({
        limit,
        end: 'at least',
        measured: laid.shape.up,
        bound,
        at: first.id,
        place: () => alongFlashing(laid, survey.wall.gauge),
      });
    }
  },
};
