import type { Fault } from '../../fault';
import { boundIn, valueAt } from '../../spoil-input';
import { spoilTie } from './tie-changes';

/** Strap is rolled in hundredths of a millimetre. */
const HUNDREDTHS = 100;

/** What feelers tell, mm. */
const CLEAR = 0.055;

/** One strap out of a lighter box: thinner, and in bad cases narrower too. */
export const thinTie: Fault = {
  id: 'thin-tie',
  masonry: 'anchored',
  tolerated: 0.95,
  spoil: (input) => {
    const least = boundIn(input.rules, 'tie-thickness');
    const round = input.severity > 1 ? Math.floor : Math.ceil;
    const thin = round(valueAt(least, input.severity, CLEAR) * HUNDREDTHS) / HUNDREDTHS;
    return spoilTie(input, (tie) => ({
      ...tie,
      thickness: Math.min(thin, tie.thickness),
      width: input.severity > 2 ? 16 : tie.width,
    }));
  },
};
