import { boundAt } from '../../../limits/bound';
import { pastEdge } from '../../../wall/drainage';
import type { Check } from '../../check';
import { alongFlashing, flashingsOf } from './flashings';

/**
 * Flashings as for low-flashing: how far the outer edge stands past the foremost of the supports under it, nothing where it stops at that or
 * inside, against `flashing-past-face`. Parts: those supports.
 */
export const shortFlashing: Check = {
  id: 'short-flashing',
  name: 'Flashing stops short of the face',
  alsoCalled:
    'flashing cut back, flashing trimmed flush, no drip, flashing not brought out, tray stops inside the wall',
  looksLike: 'The sheet ends at the edge of the ledge or the steel, or inside, and no drip shows.',
  whereToLook: 'Section through the base and over each opening, and the front view along the edge.',
  measuredBy: 'Measure from the front edge of what the flashing lies on to the edge of the flashing.',
  whyItMatters:
    'Water runs off its edge inside the wall. It soaks the mortar below, or runs back under the flashing.',
  putsRight:
    'Before brick hides it, a strip of metal with a drip is lapped under its edge. Later a specialist opens the course on it.',
  caughtAt: 'When the flashing is in, and again before anyone trims it',
  mistakenFor: ['no-flashing', 'low-flashing'],
  markedOn: ['support'],
  hazard: 'lets water in',
  reach: 'in sight',
  lesson: 'keeping-water-out',
  asks: { what: 'How far the flashing stands past the edge under it', unit: 'mm' },
  tooNear: 1,
  measure: (survey, limits, report) => {
    const limit = limits('flashing-past-face');
    if (limit === undefined) return;
    const bound = boundAt(limit, {});
    for (const laid of flashingsOf(survey)) {
      const [first] = laid.under;
      if (first === undefined) continue;
      report({
        limit,
        end: 'at least',
        measured: pastEdge(laid.shape, laid.under),
        bound,
        at: first.id,
        place: () => alongFlashing(laid, survey.wall.gauge),
      });
    }
  },
};
