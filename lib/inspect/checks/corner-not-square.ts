import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import type { Panel } from '../../wall/model';
import type { Placed } from '../../wall/survey';
import { boxOf } from '../places';
import type { Check } from '../sight';

const LEG = 1000;

/** How far 1 m along the return lies off the square line, in plan. */
export const cornerNotSquare: Check = {
  id: 'corner-not-square',
  measure: ({ panels }, rules, see) => {
    const limit = limitOf(rules, 'corner-square');
    if (limit === undefined) return;
    for (let index = 1; index < panels.length; index++) {
      const left = panels[index - 1];
      const right = panels[index];
      if (left?.panel.rightEnd !== 'corner' || right?.panel.leftEnd !== 'corner') continue;
      const at = `${left.panel.id}-${right.panel.id}-corner`;
      see({
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
  return (LEG * Math.abs(ax * bx + az * bz)) / Math.sqrt((ax * ax + az * az) * (bx * bx + bz * bz));
}
