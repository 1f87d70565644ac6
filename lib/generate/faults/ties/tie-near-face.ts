import { snap } from '../../../units';
import { WALL_KINDS } from '../../../wall/model';
import type { Fault } from '../../fault';
import { boundIn } from '../../spoil-input';
import { spoilTie } from './tie-changes';

/** One tie too long for its cavity: its end comes close to the face. */
export const tieNearFace: Fault = {
  id: 'tie-near-face',
  kinds: WALL_KINDS,
  masonry: ['anchored'],
  most: 4,
  spoil: (input) => {
    const cover = boundIn(input.rules, 'tie-cover') / input.severity;
    return spoilTie(input, (tie) => ({ ...tie, embedment: snap(input.wall.family.depth - cover) }));
  },
};
