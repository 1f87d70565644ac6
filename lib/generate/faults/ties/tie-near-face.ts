import { snap } from '../../../units';
import type { Fault } from '../../fault';
import { boundIn, valueAt } from '../../spoil-input';
import { spoilTie } from './tie-changes';

/** What a tape tells, mm. */
const CLEAR = 2.25;

/** One tie too long for its cavity: its end comes close to the face. */
export const tieNearFace: Fault = {
  id: 'tie-near-face',
  masonry: 'anchored',
  tolerated: 0.95,
  spoil: (input) => {
    const cover = valueAt(boundIn(input.rules, 'tie-cover'), input.severity, CLEAR);
    const embedment = snap(input.wall.family.depth - cover);
    return spoilTie(input, (tie) => ({ ...tie, embedment: Math.max(embedment, tie.embedment) }));
  },
};
