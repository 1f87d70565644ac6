import { isOver, tellsDrainage } from '../../../wall/drainage';
import type { Check } from '../../check';
import { strip } from './flashings';

/**
 * Walls that tell how they drain, each support but of wood: whether a flashing lies on it (its level within half a gauge of the support's, and
 * some length shared). Measured: 1 or 0, against 1, where the rules have `flashing-present`. Parts: the support.
 */
export const noFlashing: Check = {
  id: 'no-flashing',
  name: 'No flashing',
  alsoCalled:
    'missing flashing, no cavity tray, tray left out, no through-wall flashing, no membrane over the lintel, no base flashing',
  looksLike:
    'No edge of a sheet shows where the wall stands on its ledge or its lintel, and there are no weeps.',
  whereToLook: 'Section through the base and over each opening. From the front, look for its edge.',
  measuredBy: 'Look in the section, or for the edge at the face, and say whether a flashing is there or not.',
  whyItMatters:
    'Water that runs down behind the wall has nothing to lead it out. It wets the frame, the steel and the floor.',
  putsRight:
    'A specialist takes out courses a few at a time and builds a flashing in. A licensed engineer says how the wall is held meanwhile.',
  caughtAt: 'Before the first course on a ledge or a lintel',
  mistakenFor: ['short-flashing', 'no-lintel'],
  markedOn: ['support'],
  hazard: 'lets water in',
  reach: 'in sight',
  lesson: 'keeping-water-out',
  asks: { what: 'Flashing', unit: 'there or not' },
  tooNear: 0,
  measure: ({ wall, panels }, limits, report) => {
    const limit = limits('flashing-present');
    if (limit === undefined || !tellsDrainage(wall)) return;
    for (const { supports } of panels) {
      for (const support of supports) {
        if (support.material === 'wood') continue;
        report({
          limit,
          end: 'at least',
          measured: wall.flashings.some((flashing) => isOver(flashing, support, wall.gauge)) ? 1 : 0,
          bound: 1,
          at: support.id,
          place: () => ({ parts: [support.id], region: strip(support, wall.gauge) }),
        });
      }
    }
  },
};
