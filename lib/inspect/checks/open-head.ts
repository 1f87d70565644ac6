import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { type Flashing, headId } from '../../wall/model';
import type { Placed, Survey } from '../../wall/survey';
import { headBox } from '../places';
import type { Check } from '../sight';

/** Share of a head joint that is filled. A head with no mortar at all in the course right on a flashing is a weep, and is meant to be open. */
export const openHead: Check = {
  id: 'open-head',
  measure: (survey, rules, see) => {
    const limit = limitOf(rules, 'head-fill');
    if (limit === undefined || survey.wall.heads.length === 0) return;
    const bound = boundAt(limit, {});
    const filled = new Map(survey.wall.heads.map((head) => [head.joint, head.filled]));
    for (const { placed } of survey.panels) {
      for (const left of placed) {
        const { right } = left;
        if (right === null) continue;
        const at = headId(left.unit.id, right.unit.position);
        const measured = filled.get(at);
        if (measured === undefined || (measured === 0 && isWeep(survey, left, right))) continue;
        see({
          limit,
          end: 'at least',
          measured,
          bound,
          at,
          place: () => ({ parts: [at, left.unit.id, right.unit.id], region: headBox(left) }),
        });
      }
    }
  },
};

/** An open head in the course right on a flashing. */
export function isWeep({ wall }: Survey, left: Placed, right: Placed): boolean {
  const { unit } = left;
  return wall.flashings.some(
    (flashing: Flashing) =>
      flashing.panel === unit.panel &&
      unit.y >= flashing.y &&
      unit.y - flashing.y < wall.gauge / 2 &&
      unit.x + unit.length >= flashing.fromX &&
      right.unit.x <= flashing.toX,
  );
}
