import { snap } from '../../../units';
import type { Fault } from '../../fault';
import { boundIn, departureAt, NoRoom } from '../../spoil-input';

/** What a square tells, and the eighth of a millimetre that the plan is drawn to, mm per m. */
const CLEAR = 1.25;

/** Swings the return out of square about its corner. */
export const cornerNotSquare: Fault = {
  id: 'corner-not-square',
  kinds: ['door-corner'],
  tolerated: 0.9,
  spoil: ({ wall, rules, severity, chance }) => {
    const panel = wall.panels.find(({ leftEnd }) => leftEnd === 'corner');
    if (panel === undefined) throw new NoRoom('no corner');
    const out =
      snap((departureAt(boundIn(rules, 'corner-square'), severity, CLEAR) * panel.length) / 1000) *
      (chance.happens(50) ? 1 : -1);
    const swung = { ...panel, plan: { ...panel.plan, rightX: panel.plan.rightX + out } };
    return {
      wall: { ...wall, panels: wall.panels.map((each) => (each === panel ? swung : each)) },
      taken: { panel: '', x: 0, y: 0, width: 0, height: 0 },
    };
  },
};
