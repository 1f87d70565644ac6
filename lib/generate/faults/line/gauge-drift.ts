import { ROD_COURSES } from '../../../wall/courses';
import { shiftCourses } from '../../draft';
import { type Fault, NO_OPENING } from '../../fault';
import { boundIn, NoRoom, pickPanel, spotOfPanel } from '../../spoil-input';

/** Beds that gain more than this a course would be thick joints; that lose more, thin ones (half their tolerance, common practice). */
const MOST_EACH = 1.5;

/** Gains or loses the same little at every bed. */
export const gaugeDrift: Fault = {
  id: 'gauge-drift',
  kinds: NO_OPENING,
  masonry: ['anchored', 'adhered'],
  most: 2,
  needs: ['no quoins'],
  spoil: (input) => {
    const { wall, rules, severity } = input;
    const most = boundIn(rules, 'gauge');
    const panel = pickPanel(input);
    if (wall.openings.some((opening) => opening.panel === panel.id)) throw new NoRoom('openings');
    const each = Math.min(MOST_EACH, (most * severity) / ROD_COURSES);
    // Beds over 10 mm by design lose, beds under it gain: that way they stay nearest to 10.
    const way = wall.gauge - wall.family.height > 10 ? -1 : 1;
    return {
      wall: shiftCourses(wall, panel.id, (course) => way * each * (course - 1)),
      taken: spotOfPanel(panel),
    };
  },
};
