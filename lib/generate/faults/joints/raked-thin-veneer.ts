import { snap } from '../../../units';
import type { Fault } from '../../fault';
import { spotOf } from '../../spoil-input';

/** Rakes the joints of one panel; the plan has laid it in thin veneer. */
export const rakedThinVeneer: Fault = {
  id: 'raked-thin-veneer',
  masonry: 'anchored',
  needs: ['thin units'],
  limit: 'rake-on-thin-veneer',
  spoil: ({ wall, severity, chance }) => {
    const panel = chance.pick(wall.panels);
    const raked = { ...panel, profile: 'raked' as const, recess: snap(3 + 2 * severity) };
    const [first] = wall.units;
    return {
      wall: { ...wall, panels: wall.panels.map((each) => (each === panel ? raked : each)) },
      // Raking moves nothing that is measured elsewhere: only a point is taken.
      taken: { ...spotOf(first ? [first] : []), panel: '' },
    };
  },
};
