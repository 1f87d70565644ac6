import type { Fault } from '../../fault';
import { hollowIn } from '../../lay-backs';
import { bareShare, LEAST_BARE, spoilBacks } from './patch';

/** A rim of mortar round a bare middle, over one patch. */
export const ringButteredBack: Fault = {
  id: 'ring-buttered-back',
  masonry: 'adhered',
  least: LEAST_BARE,
  spoil: (input) => {
    const bare = bareShare(input.severity);
    return spoilBacks(input, ({ length, height }) => hollowIn(length, height, bare));
  },
};
