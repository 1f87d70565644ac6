import { boundAt } from '../../../limits/bound';
import { limitOf } from '../../../limits/limits';
import { WALL_KINDS } from '../../../wall/model';
import type { Fault } from '../../fault';
import { NoRoom } from '../../spoil-input';
import { spoilTie } from './tie-changes';

/** Strap is rolled in hundredths of a millimetre. */
const HUNDREDTHS = 100;

/** One strap out of a lighter box: thinner, and in bad cases narrower too. */
export const thinTie: Fault = {
  id: 'thin-tie',
  kinds: WALL_KINDS,
  masonry: ['anchored'],
  most: 4,
  spoil: (input) => {
    const thickness = limitOf(input.rules, 'tie-thickness');
    if (thickness === undefined) throw new NoRoom('no thickness limit');
    const thin = Math.floor((boundAt(thickness, {}) / input.severity) * HUNDREDTHS) / HUNDREDTHS;
    return spoilTie(input, (tie) => ({
      ...tie,
      thickness: thin,
      width: input.severity > 2 ? 16 : tie.width,
    }));
  },
};
