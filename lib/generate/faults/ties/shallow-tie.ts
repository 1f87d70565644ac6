import { snap } from '../../../units';
import { WALL_KINDS } from '../../../wall/model';
import type { Fault } from '../../fault';
import { boundIn } from '../../spoil-input';
import { spoilTie } from './tie-changes';

/** One tie too short for its cavity: it barely reaches into the bed. */
export const shallowTie: Fault = {
  id: 'shallow-tie',
  kinds: WALL_KINDS,
  masonry: ['anchored'],
  most: 4,
  spoil: (input) => {
    const { depth } = input.wall.family;
    const embedment = snap(boundIn(input.rules, 'tie-embedment', { depth }) / input.severity);
    return spoilTie(input, (tie) => ({ ...tie, embedment }));
  },
};
