import { boundAt } from '../../../limits/bound';
import { limitOf } from '../../../limits/limits';
import type { Fault } from '../../fault';
import { departureAt, NoRoom } from '../../spoil-input';
import { spoilBatch } from './one-batch';

/** Mortar left standing is not used after half a day. */
const MOST_MINUTES = 360;

/** What a watch tells, minutes. */
const CLEAR = 6;

/** One mixing used after its time. */
export const staleMortar: Fault = {
  id: 'stale-mortar',
  spoil: (input) => {
    const limit = limitOf(input.rules, 'mortar-life');
    if (limit === undefined) throw new NoRoom('no mortar clock');
    return spoilBatch(input, (batch) => ({
      ...batch,
      minutes: Math.min(
        MOST_MINUTES,
        Math.round(departureAt(boundAt(limit, { air: batch.air }), input.severity, CLEAR)),
      ),
    }));
  },
};
