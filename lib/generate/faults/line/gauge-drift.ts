import { boundAt } from '../../../limits/bound';
import { limitOf } from '../../../limits/limits';
import { ROD_COURSES } from '../../../wall/courses';
import { shiftCourses } from '../../draft';
import { type Fault, NO_OPENING } from '../../fault';
import { NoRoom, spotOfPanel } from '../../spoil-input';

/** Beds that gain more than this a course would be thick joints; that lose more, thin ones (half their tolerance, common practice). */
const MOST_EACH = 1.5;

/** Gains or loses the same little at every bed. */
export const gaugeDrift: Fault = {
  id: 'gauge-drift',
  kinds: NO_OPENING,
  masonry: ['anchored', 'adhered'],
  most: 2,
  needs: ['no quoins'],
  spoil: ({ wall, rules, severity, chance, taken }) => {
    const limit = limitOf(rules, 'gauge');
    const panel = chance.pick(wall.panels);
    if (limit === undefined || taken.some((spot) => spot.panel === panel.id)) throw new NoRoom('gauge');
    if (wall.openings.some((opening) => opening.panel === panel.id)) throw new NoRoom('openings');
    const each = Math.min(MOST_EACH, (boundAt(limit, {}) * severity) / ROD_COURSES);
    // Beds over 10 mm by design lose, beds under it gain: that way they stay nearest to 10.
    const way = wall.gauge - wall.family.height > 10 ? -1 : 1;
    return {
      wall: shiftCourses(wall, panel.id, (course) => way * each * (course - 1)),
      taken: spotOfPanel(panel),
    };
  },
};
