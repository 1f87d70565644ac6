import { boundAt } from '../../../limits/bound';
import { limitOf } from '../../../limits/limits';
import { snap } from '../../../units';
import type { Fault } from '../../fault';
import { NoRoom } from '../../spoil-input';

/** Swings the return out of square about its corner. */
export const cornerNotSquare: Fault = {
  id: 'corner-not-square',
  kinds: ['door-corner'],
  masonry: ['anchored', 'adhered'],
  most: 4,
  spoil: ({ wall, rules, severity, chance }) => {
    const limit = limitOf(rules, 'corner-square');
    const panel = wall.panels.find(({ leftEnd }) => leftEnd === 'corner');
    if (limit === undefined || panel === undefined) throw new NoRoom('no corner');
    const out = snap((boundAt(limit, {}) * severity * panel.length) / 1000) * (chance.happens(50) ? 1 : -1);
    const swung = { ...panel, plan: { ...panel.plan, rightX: panel.plan.rightX + out } };
    return {
      wall: { ...wall, panels: wall.panels.map((each) => (each === panel ? swung : each)) },
      taken: { panel: '', x: 0, y: 0, width: 0, height: 0 },
    };
  },
};
