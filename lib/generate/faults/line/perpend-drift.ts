import type { Mm } from '../../../units';
import { snap } from '../../../units';
import type { Panel, Wall } from '../../../wall/model';
import type { Fault } from '../../fault';
import { withLength } from '../../lay-backs';
import { boundIn, departureAt, NoRoom, pickPanel, spotOfPanel } from '../../spoil-input';

/** Share of the creep of a unit that its own length takes; the head joint takes the rest. */
const BY_LENGTH = 0.65;
const FROM_COURSE = 2;
/** What a plumb line tells, and the scatter of the joints: of the one line that has to be off, and of all that must not, mm. */
const CLEAR_ONE = 2.5;
const CLEAR_ALL = 2.75;
/** Steeper, and the head joints themselves would be off. */
const STEEPEST = 0.0225;

/** Units creep sideways a little more each course: most in the middle of a stretch, not at all at its ends and jambs. */
export const perpendDrift: Fault = {
  id: 'perpend-drift',
  kinds: ['plain-panel', 'window-panel', 'door-corner'],
  masonry: ['anchored', 'adhered'],
  most: 2.3,
  tolerated: 0.9,
  needs: ['half lap', 'no tall units'],
  spoil: (input) => {
    const { wall, rules, severity, chance } = input;
    const most = boundIn(rules, 'perpend-line');
    const panel = pickPanel(input, 'bond');
    const { length, courses } = panel;
    const fixed = [0, length, ...jambsOf(wall, panel)].sort((a, b) => a - b);
    const widest = Math.max(...fixed.slice(1).map((x, at) => x - (fixed[at] ?? x)));
    const wanted = departureAt(most, severity, severity > 1 ? CLEAR_ONE : CLEAR_ALL);
    const gathered = Math.min(wanted, (STEEPEST * widest) / 2);
    if (severity > 1 && gathered < most + CLEAR_ONE) throw new NoRoom('too short a stretch to creep in');
    const way = chance.happens(50) ? 1 : -1;
    const creep = (course: number, x: number) => {
      const away = Math.min(...fixed.map((each) => Math.abs(each - x)));
      return (
        (way * gathered * Math.max(0, course - FROM_COURSE) * away * 2) / ((courses - FROM_COURSE) * widest)
      );
    };
    const units = wall.units.map((unit) => {
      if (unit.panel !== panel.id) return unit;
      const left = creep(unit.course, unit.x);
      const stretch = creep(unit.course, unit.x + unit.length + wall.joint) - left;
      return withLength(unit, unit.x + snap(left), unit.length + snap(stretch * BY_LENGTH));
    });
    return { wall: { ...wall, units }, taken: spotOfPanel(panel, 'bond') };
  },
};

function jambsOf({ openings }: Wall, { id }: Panel): readonly Mm[] {
  return openings.flatMap(({ panel, x, width }) => (panel === id ? [x, x + width] : []));
}
