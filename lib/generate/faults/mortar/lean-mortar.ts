import type { Fault } from '../../fault';
import { boundIn } from '../../spoil-input';
import { spoilBatch } from './one-batch';

/** Sand is measured in quarter boxes. */
const QUARTERS = 4;

/** One mixing with too much sand. */
export const leanMortar: Fault = {
  id: 'lean-mortar',
  spoil: (input) => {
    const most = boundIn(input.rules, 'sand-ratio');
    return spoilBatch(input, (batch) => ({
      ...batch,
      sand: Math.ceil((batch.portland + batch.lime) * most * input.severity * QUARTERS) / QUARTERS,
    }));
  },
};
