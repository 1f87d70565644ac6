import { limitOf } from '../../../limits/limits';
import { snap } from '../../../units';
import { WALL_KINDS } from '../../../wall/model';
import type { Fault } from '../../fault';
import { NoRoom, spotOfPanel } from '../../spoil-input';
import { slopeFor } from './slope-for';

/** Leans one panel about its foot: out or in, in where a lintel would lose its bearing. */
export const outOfPlumb: Fault = {
  id: 'out-of-plumb',
  kinds: WALL_KINDS,
  masonry: ['anchored', 'adhered'],
  most: 2.6,
  spoil: ({ wall, rules, severity, chance, taken }) => {
    const limit = limitOf(rules, 'plumb');
    const panel = chance.pick(wall.panels);
    if (limit === undefined || taken.some((spot) => spot.panel === panel.id)) throw new NoRoom('plumb');
    const height = panel.courses * wall.gauge;
    const spanned = wall.openings.some((opening) => opening.panel === panel.id);
    const way = spanned || chance.happens(50) ? -1 : 1;
    const lean = way * slopeFor(limit.bound, height, severity);
    const units = wall.units.map((unit) =>
      unit.panel === panel.id ? { ...unit, set: unit.set + snap(lean * (unit.y + unit.height / 2)) } : unit,
    );
    return { wall: { ...wall, units }, taken: spotOfPanel(panel) };
  },
};
