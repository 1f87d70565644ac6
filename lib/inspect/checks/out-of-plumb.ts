import { slopeVerdict } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { facePlaneOf } from '../../wall/face-plane';
import type { PanelSurvey } from '../../wall/survey';
import { panelBox } from '../places';
import type { Check } from '../sight';

const LEAST_UNITS = 24;

/** Lean of the best plane of the face over the height of the panel. */
export const outOfPlumb: Check = {
  id: 'out-of-plumb',
  measure: ({ panels }, rules, see) => {
    const limit = limitOf(rules, 'plumb');
    if (limit === undefined) return;
    for (const survey of panels) {
      const { panel, placed } = survey;
      const plane = placed.length < LEAST_UNITS ? null : facePlaneOf(placed);
      if (plane === null) continue;
      const verdict = slopeVerdict(limit.bound, Math.abs(plane.up), heightOf(survey));
      see({
        limit,
        end: 'at most',
        measured: verdict.measured,
        bound: verdict.limit,
        at: panel.id,
        place: () => ({ parts: [panel.id], region: panelBox(survey) }),
      });
    }
  },
};

/** From the lowest underside of the first course to the highest top of the last, both at the middle of their units, mm. */
function heightOf({ courses }: PanelSurvey): number {
  const tops = (courses[courses.length - 1] ?? []).map(({ unit }) => unit.y - unit.fall / 2 + unit.height);
  const undersides = (courses[0] ?? []).map(({ unit }) => unit.y - unit.fall / 2);
  return Math.max(...tops) - Math.min(...undersides);
}
