import type { CatalogueRow } from '../catalogue-row';
import type { CheckId } from '../finding';

/** What can be wrong with level, gauge, perpends, plumb, face and corner. */
export const LINE_ROWS = {
  'course-off-level': {
    name: 'Course off level',
    alsoCalled: ['out of level', 'sloping course', 'row runs downhill', 'row runs uphill', 'line not level'],
    looksLike: 'A whole course slopes, though its joints stay even.',
    whereToLook: 'Front view. Pick the whole course and read how much one end is lower than the other.',
    measuredBy:
      'Level from one end of the course to the other, and compare the drop with the distance between them.',
    whyItMatters: 'The slope shows wherever it meets a sill or a roof line. It ends in cut units and wedges.',
    putsRight:
      'The mason brings the wall back to level a little at a time over the next courses. A slope that shows is taken down and laid anew.',
    caughtAt: 'At the first course, then at every corner lead',
    mistakenFor: ['tapering-bed', 'gauge-drift'],
    hazard: 'looks',
    reach: 'in sight',
    scope: 'course',
  },
  'gauge-drift': {
    name: 'Gauge drifts',
    alsoCalled: [
      'off gauge',
      'out of gauge',
      'coursing out',
      'off the story pole',
      'off the storey rod',
      'off the gauge rod',
      'pig in the wall',
    ],
    looksLike: 'The courses rise a little too fast or too slowly, so they miss the marks on the rod.',
    whereToLook: 'Front view. Pick the whole panel and read what four courses take up, joints included.',
    measuredBy:
      'Measure from the first course to the top one, and compare the mean of four courses with the gauge.',
    whyItMatters:
      'Small errors add up. At a window head or the roof, the last course no longer fits and must be cut.',
    putsRight:
      'The mason checks the rod and spreads the error over the courses still to come. If a split course shows, that part is rebuilt.',
    caughtAt: 'With the rod at every few courses, before the next lift',
    mistakenFor: ['course-off-level', 'thick-joint', 'thin-joint'],
    hazard: 'looks',
    reach: 'in sight',
    scope: 'panel',
  },
  'perpend-drift': {
    name: 'Perpends drift',
    alsoCalled: [
      'wandering perps',
      'perps out of line',
      'perps out of plumb',
      'head joints do not line up',
      'cross joints wander',
      'bond creeps',
    ],
    looksLike: 'Head joints that should stand above each other lean or wander to one side.',
    whereToLook: 'Front view. Let your eye run up the head joints of every other course.',
    measuredBy:
      'Hang a plumb line along head joints that should line up, and measure how far they spread sideways.',
    whyItMatters: 'It spoils the pattern. The courses run out of room at an opening and end in odd cuts.',
    putsRight:
      'The mason evens out the head joints before the next opening. The worst part is taken down and laid anew.',
    caughtAt: 'When bricks are set out dry, then with a plumb line each lift',
    mistakenFor: ['handmade-size-range'],
    hazard: 'looks',
    reach: 'in sight',
    scope: 'joint',
  },
  'bulge-or-hollow': {
    name: 'Bulge or hollow',
    alsoCalled: ['belly', 'bow', 'hump', 'dished wall', 'crowding the line', 'out of range', 'ranging out'],
    looksLike: 'A patch of the wall swells out or sinks in, while the rest keeps its plane.',
    whereToLook:
      'Front view, by the shadows. Pick the whole panel and read how far it stands out and back at most. Pick units to find where.',
    measuredBy: 'Hold a long straightedge on the face and measure how far a patch stands out or sinks in.',
    whyItMatters:
      'In a new wall it is a matter of looks. In an old wall any bulge is movement, and the wall may fall.',
    putsRight:
      'In a new wall, the mason takes the patch down and lays it anew. In an old wall, keep people away. A licensed engineer decides what to do.',
    caughtAt: 'Before each lift of scaffold goes up',
    mistakenFor: ['out-of-plumb', 'textured-units'],
    hazard: 'looks',
    reach: 'in sight',
    scope: 'panel',
  },
  'out-of-plumb': {
    name: 'Out of plumb',
    alsoCalled: ['leaning wall', 'lean', 'tilted wall', 'off plumb', 'not upright'],
    looksLike: 'The whole face leans out or back, from bottom to top.',
    whereToLook: 'Front view. Pick the whole panel and read how far its top leans out or back.',
    measuredBy: 'Hang a plumb line or hold a long level, and measure how far the face leans over its height.',
    whyItMatters:
      'A lean makes the gap behind the wall uneven and shifts the weight on its support. If it grows, the wall may fall.',
    putsRight:
      'In a new wall, the mason takes the leaning part down and lays it anew. In an old wall, keep people away. A licensed engineer decides what to do.',
    caughtAt: 'At every corner lead, and before each lift of scaffold goes up',
    mistakenFor: ['bulge-or-hollow', 'corner-not-square'],
    hazard: 'looks',
    reach: 'in sight',
    scope: 'panel',
  },
  'twisted-unit': {
    name: 'Twisted unit',
    alsoCalled: ['twisted brick', 'skewed brick', 'cocked brick', 'crooked brick', 'one end out'],
    looksLike: 'One end of a unit stands out and catches the light, the other end does not.',
    whereToLook: 'Along the wall in low light from the side. The front view shows only a thin shadow.',
    measuredBy: 'Hold a straightedge along the course, and measure how much farther out one end stands.',
    whyItMatters: 'It makes a shadow and a small ledge where water rests.',
    putsRight:
      'While the mortar is fresh, the mason sets the unit straight or swaps it. Once it has set, the mason cuts it out and lays another.',
    caughtAt: 'As each unit is laid to the line',
    mistakenFor: ['proud-unit', 'textured-units'],
    hazard: 'looks',
    reach: 'in sight',
    scope: 'unit',
  },
  'proud-unit': {
    name: 'Unit proud or set back',
    alsoCalled: [
      'lippage',
      'lipping',
      'sticks out',
      'stands out',
      'recessed brick',
      'set in',
      'stepped face',
    ],
    looksLike: 'One unit stands farther out or farther in than all the units around it.',
    whereToLook: 'Front view, by its shadow, or along the wall in low light. A finger feels the step.',
    measuredBy: 'Hold a straightedge over the units around it, and measure the step to this one.',
    whyItMatters:
      'It throws a shadow, and water drips from it or rests on it. If it is loose as well, it could fall.',
    putsRight:
      'While the mortar is fresh, the mason taps it into line. Once it has set, the mason cuts it out and lays another. It is never ground flat. If it is loose, keep people away.',
    caughtAt: 'As each unit is laid to the line',
    mistakenFor: ['twisted-unit', 'projecting-pattern', 'textured-units'],
    hazard: 'looks',
    reach: 'in sight',
    scope: 'unit',
  },
  'corner-not-square': {
    name: 'Corner not square',
    alsoCalled: [
      'out of square',
      'quoin out',
      'return not square',
      'corner lead out of square',
      'skewed return',
    ],
    looksLike: 'The two faces of a corner open too wide or close too far.',
    whereToLook: 'Front view. Pick the corner and read how far the return strays from square.',
    measuredBy: 'Set a large square on one face, and measure how far the other face strays from it.',
    whyItMatters:
      'The courses need odd cuts at sills and roof lines. The wall may also hang past its ledge at one end.',
    putsRight:
      'At the first course, the mason moves the units over. Later, the return is taken down and laid anew.',
    caughtAt: 'At the first course, before a second one hides the lines',
    mistakenFor: ['out-of-plumb'],
    hazard: 'looks',
    reach: 'in sight',
    scope: 'corner',
  },
} satisfies Partial<Record<CheckId, CatalogueRow>>;
