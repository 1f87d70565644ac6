import { boundAt } from '../../../limits/bound';
import { MM_PER_M } from '../../../units';
import type { Panel } from '../../../wall/model';
import { cornerId } from '../../../wall/part-id';
import type { Placed } from '../../../wall/survey';
import type { Check } from '../../check';
import { boxOf } from '../../places';

/**
 * Each corner, where the panel listed first ends in a corner at its right and the next at its left. How far, in plan, 1 m along the return lies
 * off the square line: 1,000 times the cosine of the angle between the two face lines, without its sign; against `corner-square`.
 * Parts: the corner, such as A-B-corner.
 */
export const cornerNotSquare: Check = {
  id: 'corner-not-square',
  name: 'Corner not square',
  alsoCalled: 'out of square, quoin out, return not square, corner lead out of square, skewed return',
  looksLike: 'The two faces of a corner open too wide or close too far.',
  whereToLook: 'Front view. Pick the corner and read how far the return strays from square.',
  measuredBy: 'Set a large square on one face, and measure how far the other face strays from it.',
  whyItMatters:
    'The courses need odd cuts at sills and roof lines. The wall may also hang past its ledge at one end.',
  putsRight:
    'At the first course, the mason moves the units over. Later, the return is taken down and laid anew.',
  caughtAt: 'At the first course, before a second one hides the lines',
  mistakenFor: ['out-of-plumb'],
  markedOn: ['corner'],
  hazard: 'looks',
  reach: 'in sight',
  lesson: 'line-level-plumb',
  asks: { what: 'Off the square line, 1 m along the return', unit: 'mm per m' },
  tooNear: 1,
  measure: ({ panels }, limits, report) => {
    const limit = limits('corner-square');
    if (limit === undefined) return;
    for (let index = 1; index < panels.length; index++) {
      const left = panels[index - 1];
      const right = panels[index];
      if (left?.panel.rightEnd !== 'corner' || right?.panel.leftEnd !== 'corner') continue;
      const at = cornerId(left.panel.id, right.panel.id);
      report({
        limit,
        end: 'at most',
        measured: offSquare(left.panel, right.panel),
        bound: boundAt(limit, {}),
        at,
        place: () => {
          // Shown on the return, the later of the two panels by name, whichever side it lies.
          const atLeft = right.panel.id > left.panel.id;
          const end = (course: readonly Placed[]) => (atLeft ? course.slice(0, 1) : course.slice(-1));
          return { parts: [at], region: boxOf((atLeft ? right : left).courses.flatMap(end)) };
        },
      });
    }
  },
};

/** |cosine| of the angle between the face lines, over a leg of 1 m. */
function offSquare({ plan: a }: Panel, { plan: b }: Panel): number {
  const [ax, az] = [a.rightX - a.leftX, a.rightZ - a.leftZ];
  const [bx, bz] = [b.rightX - b.leftX, b.rightZ - b.leftZ];
  return (MM_PER_M * Math.abs(ax * bx + az * bz)) / Math.sqrt((ax * ax + az * az) * (bx * bx + bz * bz));
}
