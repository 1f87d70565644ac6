import { snap } from '../../../units';
import type { Fault } from '../../fault';
import { boundIn, valueAt } from '../../spoil-input';
import { spoilTie } from './tie-changes';

/** What a tape tells, mm. */
const CLEAR = 2.25;

/** One tie too short for its cavity: it barely reaches into the bed. */
export const shallowTie: Fault = {
  id: 'shallow-tie',
  masonry: 'anchored',
  tolerated: 0.95,
  spoil: (input) => {
    const { depth } = input.wall.family;
    const embedment = snap(valueAt(boundIn(input.rules, 'tie-embedment', { depth }), input.severity, CLEAR));
    // In sound work a tie that reaches in less than others.
    return spoilTie(input, (tie) => ({ ...tie, embedment: Math.min(embedment, tie.embedment) }));
  },
};
