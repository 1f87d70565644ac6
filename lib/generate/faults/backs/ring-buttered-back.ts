import { WALL_KINDS } from '../../../wall/model';
import type { Fault } from '../../fault';
import { bareShare, onGrid, spoilBacks } from './patch';

/** A rim of mortar round a bare middle, over one patch. */
export const ringButteredBack: Fault = {
  id: 'ring-buttered-back',
  kinds: WALL_KINDS,
  masonry: ['adhered'],
  most: 4,
  spoil: (input) => {
    const bare = bareShare(input.severity);
    return spoilBacks(input, ({ length, height }) => {
      const side = Math.sqrt(bare);
      const across = (length * (1 - side)) / 2;
      const up = (height * (1 - side)) / 2;
      return [
        onGrid({ x: 0, y: 0, width: length, height: up }),
        onGrid({ x: 0, y: height - up, width: length, height: up }),
        onGrid({ x: 0, y: 0, width: across, height }),
        onGrid({ x: length - across, y: 0, width: across, height }),
      ];
    });
  },
};
