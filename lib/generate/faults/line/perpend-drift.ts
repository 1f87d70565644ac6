import { snap } from '../../../units';
import type { Panel } from '../../../wall/model';
import type { Fault } from '../../fault';
import { withLength } from '../../lay-backs';
import { boundIn, departureAt, pickPanel, spotOfPanel } from '../../spoil-input';

/** Share of the creep of a unit that its own length takes; the head joint takes the rest. */
const BY_LENGTH = 0.65;
const FROM_COURSE = 2;
/** What a plumb line tells, and the scatter of the joints: of the one line that has to be off, and of all that must not, mm. */
const CLEAR_ONE = 2;
const CLEAR_ALL = 2.75;
/** Steeper, and the head joints themselves would be off. */
const STEEPEST = 0.016;

/** Units creep sideways a little more each course: most in the middle of the panel, not at all at its ends. */
export const perpendDrift: Fault = {
  id: 'perpend-drift',
  kinds: ['plain-panel', 'door-corner'],
  most: 2.3,
  tolerated: 0.9,
  needs: ['half lap', 'no tall units'],
  spoil: (input) => {
    const { wall, rules, severity, chance } = input;
    const most = boundIn(rules, 'perpend-line');
    // Between jambs a stretch is too short: the head joints themselves would be off.
    const isWhole = ({ id }: Panel) => wall.openings.every((opening) => opening.panel !== id);
    const panel = pickPanel(input, 'bond', isWhole);
    const { length, courses } = panel;
    const gathered = Math.min(
      departureAt(most, severity, severity > 1 ? CLEAR_ONE : CLEAR_ALL),
      (STEEPEST * length) / 2,
    );
    const way = chance.happens(50) ? 1 : -1;
    const creep = (course: number, x: number) =>
      (way * gathered * Math.max(0, course - FROM_COURSE) * Math.min(x, length - x) * 2) /
      ((courses - FROM_COURSE) * length);
    const units = wall.units.map((unit) => {
      if (unit.panel !== panel.id) return unit;
      const left = creep(unit.course, unit.x);
      const stretch = creep(unit.course, unit.x + unit.length + wall.joint) - left;
      return withLength(unit, unit.x + snap(left), unit.length + snap(stretch * BY_LENGTH));
    });
    return { wall: { ...wall, units }, taken: spotOfPanel(panel, 'bond') };
  },
};
