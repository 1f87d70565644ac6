import { snap } from '../../../units';
import type { Fault } from '../../fault';
import { boundIn, NoRoom } from '../../spoil-input';

/** Swings the return out of square about its corner. */
export const cornerNotSquare: Fault = {
  id: 'corner-not-square',
  kinds: ['door-corner'],
  masonry: ['anchored', 'adhered'],
  most: 4,
  spoil: ({ wall, rules, severity, chance }) => {
    const panel = wall.panels.find(({ leftEnd }) => leftEnd === 'corner');
    if (panel === undefined) throw new NoRoom('no corner');
    const out =
      snap((boundIn(rules, 'corner-square') * severity * panel.length) / 1000) *
      (chance.happens(50) ? 1 : -1);
    const swung = { ...panel, plan: { ...panel.plan, rightX: panel.plan.rightX + out } };
    return {
      wall: { ...wall, panels: wall.panels.map((each) => (each === panel ? swung : each)) },
      taken: { panel: '', x: 0, y: 0, width: 0, height: 0 },
    };
  },
};
