import { ROD_COURSES } from '../../../wall/courses';
import { shiftCourses } from '../../draft';
import { type Fault, NO_CORNER } from '../../fault';
import { boundIn, departureAt, pickPanel, spotOfPanel } from '../../spoil-input';

/** Beds that gain more than this a course would be thick joints; that lose more, thin ones (half their tolerance, common practice). */
const MOST_EACH = 1.5;

/** What a rod tells over four courses, mm. */
const CLEAR = 0.4;

/** Gains or loses the same little at every bed. */
export const gaugeDrift: Fault = {
  id: 'gauge-drift',
  kinds: NO_CORNER,
  most: 2,
  tolerated: 0.9,
  needs: ['no tall units'],
  spoil: (input) => {
    const { wall, rules, severity } = input;
    const most = boundIn(rules, 'gauge');
    const panel = pickPanel(input, 'bond');
    const each = Math.min(MOST_EACH, departureAt(most, severity, CLEAR) / ROD_COURSES);
    // Beds over 10 mm by design lose, beds under it gain: that way they stay nearest to 10.
    const way = wall.gauge - wall.family.height > 10 ? -1 : 1;
    return {
      wall: shiftCourses(wall, panel.id, (course) => way * each * (course - 1)),
      taken: spotOfPanel(panel, 'bond'),
    };
  },
};
