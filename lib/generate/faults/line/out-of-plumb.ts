import { limitOf } from '../../../limits/limits';
import { snap } from '../../../units';
import type { Fault } from '../../fault';
import { NoRoom, pickPanel, spotOfPanel } from '../../spoil-input';
import { freeOfSupports } from '../support/support-changes';
import { slopeFor } from './slope-for';

/** What a plumb line tells, and what the scatter of faces adds, mm. */
const CLEAR = 1.25;

/** Leans one panel about its foot: out or in, in where a lintel would lose its bearing. */
export const outOfPlumb: Fault = {
  id: 'out-of-plumb',
  most: 2.6,
  tolerated: 0.9,
  ofFace: true,
  spoil: (input) => {
    const { wall, rules, severity, chance } = input;
    const limit = limitOf(rules, 'plumb');
    const panel = pickPanel(input, 'face', freeOfSupports(input));
    if (limit === undefined) throw new NoRoom('plumb');
    const height = panel.courses * wall.gauge;
    const spanned = wall.openings.some((opening) => opening.panel === panel.id);
    const way = spanned || chance.happens(50) ? -1 : 1;
    const lean = way * slopeFor(limit.bound, height, severity, CLEAR);
    const units = wall.units.map((unit) =>
      unit.panel === panel.id ? { ...unit, set: unit.set + snap(lean * (unit.y + unit.height / 2)) } : unit,
    );
    return { wall: { ...wall, units }, taken: spotOfPanel(panel, 'face') };
  },
};
