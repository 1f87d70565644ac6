import { boundAt, smallOpening, spacingVerdict } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { type TieGap, tieEdgesOf, tieGapsOf, tiesAtEdge } from '../../wall/tie-field';
import type { Region } from '../finding';
import { joined } from '../places';
import { type Check, severityOf } from '../sight';

/** Spacing of ties up each stud and across to the next, both and (where the rules ask) the area each tie holds. */
export const tiesTooFarApart: Check = {
  id: 'ties-too-far-apart',
  measure: ({ wall, panels }, rules, see) => {
    const limit = limitOf(rules, 'tie-spacing');
    const distance = limitOf(rules, 'tie-edge-distance');
    const upEdge = limitOf(rules, 'tie-edge-spacing');
    const reach = distance ? boundAt(distance, {}) : 0;
    const mostUpEdge = upEdge ? boundAt(upEdge, {}) : 0;
    const small = smallOpening(rules);
    if (limit === undefined || wall.masonry !== 'anchored') return;
    for (const survey of panels) {
      const { panel } = survey;
      const bare = tieEdgesOf(survey, small).filter((edge) => {
        const { serving, measured } = tiesAtEdge(survey, edge, reach);
        return serving.length === 0 ? measured > reach : measured > mostUpEdge;
      });
      const gaps = tieGapsOf(survey, bare, reach);
      const sights = gaps.map((gap) => {
        const { measured, limit: bound } = spacingVerdict(limit.bound, gap.vertical, gap.horizontal);
        return { gap, sight: { limit, end: 'at most', measured, bound, unit: 'mm', at: panel.id } as const };
      });
      const [first] = sights;
      if (first === undefined) continue;
      const worst = sights.reduce(
        (most, each) => (severityOf(each.sight) > severityOf(most.sight) ? each : most),
        first,
      );
      see({
        ...worst.sight,
        place: () => {
          const alike = sights.filter(({ sight }) => severityOf(sight) === severityOf(worst.sight));
          return { parts: [panel.id], region: joined(alike.map(({ gap }) => gapBox(gap, panel.id))) };
        },
      });
    }
  },
};

function gapBox({ leftX, rightX, lower, vertical }: TieGap, panel: string): Region {
  return { panel, x: leftX, y: lower.y, width: rightX - leftX, height: vertical };
}
