import { boundAt, smallOpening } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { type TieEdge, tieEdgesOf, tiesAtEdge } from '../../wall/tie-field';
import type { Region } from '../finding';
import type { Check } from '../sight';

/** Ties beside openings and at free ends: near enough to the edge, and close enough together up it. */
export const noTieAtEdge: Check = {
  id: 'no-tie-at-edge',
  measure: ({ wall, panels }, rules, see) => {
    const distance = limitOf(rules, 'tie-edge-distance');
    const spacing = limitOf(rules, 'tie-edge-spacing');
    if (distance === undefined || spacing === undefined || wall.masonry !== 'anchored') return;
    const reach = boundAt(distance, {});
    const small = smallOpening(rules);
    for (const survey of panels) {
      for (const edge of tieEdgesOf(survey, small)) {
        const { serving, measured } = tiesAtEdge(survey, edge, reach);
        const limit = serving.length === 0 ? distance : spacing;
        see({
          limit,
          end: 'at most',
          measured,
          bound: boundAt(limit, {}),
          at: edge.part,
          place: () => ({
            parts: [edge.part, ...serving.map(({ id }) => id)],
            region: stripOf(edge, reach, survey.panel.id),
          }),
        });
      }
    }
  },
};

function stripOf(edge: TieEdge, reach: number, panel: string): Region {
  const x = edge.side === 1 ? edge.x : edge.x - reach;
  return { panel, x, y: edge.fromY, width: reach, height: edge.toY - edge.fromY };
}
