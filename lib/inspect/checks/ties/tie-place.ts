import type { Tie } from '../../../wall/model';
import type { Place } from '../../check';

/** How much of the face round a tie is its own: half a unit each way, mm. */
const ROUND_A_TIE = 40;

export function tiePlace(tie: Tie): Place {
  return {
    parts: [tie.id],
    region: {
      panel: tie.panel,
      x: tie.x - ROUND_A_TIE,
      y: tie.y - ROUND_A_TIE,
      width: 2 * ROUND_A_TIE,
      height: 2 * ROUND_A_TIE,
    },
  };
}
