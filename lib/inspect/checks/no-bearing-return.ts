import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import type { PanelSurvey, Placed } from '../../wall/survey';
import { boxOf } from '../places';
import type { Check } from '../sight';

/** Share of the first course that stands on concrete, steel or masonry. Wood carries no veneer. */
export const noBearingReturn: Check = {
  id: 'no-bearing-return',
  measure: ({ wall, panels }, rules, see) => {
    const limit = limitOf(rules, 'supported-share');
    if (limit === undefined || wall.masonry !== 'anchored') return;
    for (const survey of panels) {
      const first = survey.courses[0] ?? [];
      if (first.length === 0) continue;
      let whole = 0;
      let carried = 0;
      for (const each of first) {
        whole += each.unit.length;
        carried += carriedLength(each, survey);
      }
      const ledges = survey.supports.filter(({ kind }) => kind === 'ledge').map(({ id }) => id);
      see({
        limit,
        end: 'at least',
        measured: (carried / whole) * 100,
        bound: boundAt(limit, {}),
        at: ledges[0] ?? survey.panel.id,
        place: () => {
          const loose = first.filter((each) => carriedLength(each, survey) < each.unit.length);
          return { parts: [...ledges, ...loose.map(({ unit }) => unit.id)], region: boxOf(loose) };
        },
      });
    }
  },
};

function carriedLength({ unit }: Placed, { supports }: PanelSurvey): number {
  let carried = 0;
  for (const support of supports) {
    if (support.kind !== 'ledge' || support.material === 'wood') continue;
    carried += Math.max(0, Math.min(unit.x + unit.length, support.toX) - Math.max(unit.x, support.fromX));
  }
  return Math.min(carried, unit.length);
}
