import type { Fault } from '../../fault';
import { onGrid } from '../../lay-backs';
import { bareShare, LEAST_BARE, spoilBacks, whole } from './patch';

/** Backs with a bare end or a bare foot, or (worse) spot dabs, over one patch. */
export const missingBackMortar: Fault = {
  id: 'missing-back-mortar',
  masonry: 'adhered',
  least: LEAST_BARE,
  spoil: (input) => {
    const bare = bareShare(input.severity);
    const dabs = input.severity >= 2.5;
    const atFoot = input.chance.happens(50);
    return spoilBacks(input, (unit) => {
      const back = whole(unit);
      if (dabs) {
        const width = ((1 - bare) * unit.length) / 3;
        const gap = (bare * unit.length) / 2;
        return [0, 1, 2].map((dab) => onGrid({ ...back, x: dab * (width + gap), width }));
      }
      return atFoot
        ? [onGrid({ ...back, y: bare * unit.height, height: unit.height })]
        : [onGrid({ ...back, width: (1 - bare) * unit.length })];
    });
  },
};
