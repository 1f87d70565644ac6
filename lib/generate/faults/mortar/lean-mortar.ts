import { WALL_KINDS } from '../../../wall/model';
import type { Fault } from '../../fault';
import { boundIn } from '../../spoil-input';
import { spoilBatch } from './one-batch';

/** Sand is measured in quarter boxes. */
const QUARTERS = 4;

/** One mixing with too much sand. */
export const leanMortar: Fault = {
  id: 'lean-mortar',
  kinds: WALL_KINDS,
  masonry: ['anchored', 'adhered'],
  most: 4,
  spoil: (input) => {
    const most = boundIn(input.rules, 'sand-ratio');
    return spoilBatch(input, (batch) => ({
      ...batch,
      sand: Math.ceil((batch.portland + batch.lime) * most * input.severity * QUARTERS) / QUARTERS,
    }));
  },
};
