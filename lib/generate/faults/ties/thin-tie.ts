import { WALL_KINDS } from '../../../wall/model';
import type { Fault } from '../../fault';
import { boundIn } from '../../spoil-input';
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
    const least = boundIn(input.rules, 'tie-thickness');
    const thin = Math.floor((least / input.severity) * HUNDREDTHS) / HUNDREDTHS;
    return spoilTie(input, (tie) => ({
      ...tie,
      thickness: thin,
      width: input.severity > 2 ? 16 : tie.width,
    }));
  },
};
