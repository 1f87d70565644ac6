import { snap } from '../../../units';
import type { Fault } from '../../fault';
import { boundIn, NoRoom, pickPanel, spotOfPanel } from '../../spoil-input';

/** Share of the creep of a unit that its own length takes; the head joint takes the rest. */
const BY_LENGTH = 0.65;
const FROM_COURSE = 2;

/** Units creep sideways a little more each course: most in the middle of the panel, not at all at its ends. */
export const perpendDrift: Fault = {
  id: 'perpend-drift',
  kinds: ['plain-panel'],
  masonry: ['anchored', 'adhered'],
  most: 2.3,
  needs: ['half lap', 'no quoins'],
  spoil: (input) => {
    const { wall, rules, severity, chance } = input;
    const most = boundIn(rules, 'perpend-line');
    const panel = pickPanel(input);
    if (panel.gable !== null || wall.openings.some((opening) => opening.panel === panel.id))
      throw new NoRoom('openings');
    const gathered = most * severity * (chance.happens(50) ? 1 : -1);
    const { length, courses } = panel;
    const creep = (course: number, x: number) =>
      (gathered * Math.max(0, course - FROM_COURSE) * Math.min(x, length - x) * 2) /
      ((courses - FROM_COURSE) * length);
    const units = wall.units.map((unit) => {
      if (unit.panel !== panel.id) return unit;
      const left = creep(unit.course, unit.x);
      const stretch = creep(unit.course, unit.x + unit.length + wall.joint) - left;
      return { ...unit, x: unit.x + snap(left), length: unit.length + snap(stretch * BY_LENGTH) };
    });
    return { wall: { ...wall, units }, taken: spotOfPanel(panel) };
  },
};
