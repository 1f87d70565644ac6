import { boundAt } from '../../../limits/bound';
import { lowestDam } from '../../../wall/drainage';
import type { Check } from '../../check';
import { alongFlashing, flashingsOf } from './flashings';

/**
 * Flashings as for low-flashing that end within their panel: the height to which the end is turned up there, the lower of the two where both
 * ends lie within it, against `end-dam`. Parts: the supports.
 */
export const noEndDam: Check = {
  id: 'no-end-dam',
  name: 'End dam missing or too low',
  alsoCalled:
    'no stop end, missing stop-end, open end of the flashing, end not turned up, tray without stop ends',
  looksLike: 'Over an opening, the flashing lies flat to its end or is barely turned up there.',
  whereToLook: 'Section over the opening: the strip along the steel shows both ends.',
  measuredBy: 'Measure how high each end of the flashing is turned up into its head joint.',
  whyItMatters:
    'Water runs off the end of the sheet. It goes into the wall beside the opening, often behind the frame.',
  putsRight:
    'Before the next course, the end is folded up and sealed. Later a specialist takes out the units at that end.',
  caughtAt: 'When the flashing is in, before the course on it',
  mistakenFor: ['low-flashing', 'short-lintel-bearing'],
  markedOn: ['support'],
  hazard: 'lets water in',
  reach: 'out of sight',
  lesson: 'keeping-water-out',
  asks: { what: 'Height of the lower end dam', unit: 'mm' },
  tooNear: 2,
  measure: (survey, limits, report) => {
    const limit = limits('end-dam');
    if (limit === undefined) return;
    const bound = boundAt(limit, {});
    for (const laid of flashingsOf(survey)) {
      const [first] = laid.under;
      const measured = lowestDam(laid.flashing, laid.shape, laid.panel.length);
      if (first === undefined || measured === null) continue;
      report({
        limit,
        end: 'at least',
        measured,
        bound,
        at: first.id,
        place: () => alongFlashing(laid, survey.wall.gauge),
      });
    }
  },
};
