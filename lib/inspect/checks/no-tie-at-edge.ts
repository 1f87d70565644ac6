import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import type { Tie } from '../../wall/model';
import { awayFrom, inSpan, type TieEdge, tieEdgesOf } from '../../wall/tie-field';
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
    for (const survey of panels) {
      for (const edge of tieEdgesOf(survey)) {
        const beside = survey.ties.filter((tie) => awayFrom(edge, tie.x) >= 0 && inSpan(edge, tie.y));
        const serving = beside.filter((tie) => awayFrom(edge, tie.x) <= reach);
        const byDistance = serving.length === 0;
        see({
          limit: byDistance ? distance : spacing,
          end: 'at most',
          measured: byDistance
            ? beside.reduce((least, tie) => Math.min(least, awayFrom(edge, tie.x)), survey.panel.length)
            : greatestGap(edge, serving),
          bound: byDistance ? reach : boundAt(spacing, {}),
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

function greatestGap(edge: TieEdge, serving: readonly Tie[]): number {
  const heights = [edge.fromY, ...serving.map(({ y }) => y).sort((a, b) => a - b), edge.toY];
  let greatest = 0;
  for (let index = 1; index < heights.length; index++) {
    greatest = Math.max(greatest, (heights[index] ?? 0) - (heights[index - 1] ?? 0));
  }
  return greatest;
}

function stripOf(edge: TieEdge, reach: number, panel: string): Region {
  const x = edge.side === 1 ? edge.x : edge.x - reach;
  return { panel, x, y: edge.fromY, width: reach, height: edge.toY - edge.fromY };
}
