import { snap } from '../../units';
import { type SpoilWall, spotOf } from '../bench';

/** Rakes the joints of one panel; the plan has laid it in thin veneer. */
export const spoilRakedThinVeneer: SpoilWall = ({ wall, severity, chance }) => {
  const panel = chance.pick(wall.panels);
  const raked = { ...panel, profile: 'raked' as const, recess: snap(3 + 2 * severity) };
  const [first] = wall.units;
  return {
    wall: { ...wall, panels: wall.panels.map((each) => (each === panel ? raked : each)) },
    // Raking moves nothing that is measured elsewhere: only a point is taken.
    taken: { ...spotOf(first ? [first] : []), panel: '' },
  };
};
