import { boundAt } from '../../../limits/bound';
import { limitOf } from '../../../limits/limits';
import { snap } from '../../../units';
import { WALL_KINDS } from '../../../wall/model';
import type { Fault } from '../../fault';
import { NoRoom } from '../../spoil-input';
import { spoilTie } from './tie-changes';

/** One tie too short for its cavity: it barely reaches into the bed. */
export const shallowTie: Fault = {
  id: 'shallow-tie',
  kinds: WALL_KINDS,
  masonry: ['anchored'],
  most: 4,
  spoil: (input) => {
    const limit = limitOf(input.rules, 'tie-embedment');
    if (limit === undefined) throw new NoRoom('no embedment limit');
    const embedment = snap(boundAt(limit, { depth: input.wall.family.depth }) / input.severity);
    return spoilTie(input, (tie) => ({ ...tie, embedment }));
  },
};
