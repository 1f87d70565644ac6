import { boundAt, smallOpening } from '../../../limits/bound';
import { type TieEdge, tieEdgesOf, tiesAtEdge } from '../../../wall/tie-field';
import type { Check } from '../../check';
import type { Region } from '../../finding';

/**
 * Anchored walls, each edge: both jambs of an opening that is wider or higher than `tie-opening`, over its height; and both free ends of a panel,
 * from the ledge to the top of the last course before a gable steps in. A tie serves an edge when it stands within its span (ends belong), at
 * most `tie-edge-distance` outward from the jamb, or inward from the end.
 *
 * None serves: the distance of the nearest tie in the span (the length of the panel where there is none), against `tie-edge-distance`. Else: the
 * widest gap up the edge, from its foot by each tie to its top, against `tie-edge-spacing`.
 * Parts: the opening, or such as A-left-end, then the ties that serve it. Region: the strip of that distance along the span.
 */
export const noTieAtEdge: Check = {
  id: 'no-tie-at-edge',
  name: 'No tie at the edge',
  alsoCalled: 'no tie at the jamb, missing jamb ties, missing reveal ties, no edge ties, loose edge',
  looksLike: 'Along an opening or an end of the wall, no tie is close by, or only a few are.',
  whereToLook: 'Before cover: the backing beside openings and ends. The finished front shows nothing.',
  measuredBy: 'Measure from the edge to the ties beside it, then from tie to tie along the edge.',
  whyItMatters: 'An edge has no wall on its other side to hold it. Wind can work it loose and peel it off.',
  putsRight:
    'Before cover, the mason adds ties, with an extra stud where one is missing. In a finished wall, keep people away. A licensed engineer decides how ties are added.',
  caughtAt: 'At every row of ties, with a photo before the brick covers it',
  mistakenFor: ['ties-too-far-apart'],
  markedOn: ['edge', 'opening'],
  hazard: 'could fall',
  reach: 'out of sight',
  lesson: 'ties',
  asks: { what: 'Edge to the nearest tie, or the gap along the edge', unit: 'mm' },
  tooNear: 5,
  measure: ({ wall, panels }, limits, report) => {
    const distance = limits('tie-edge-distance');
    const spacing = limits('tie-edge-spacing');
    if (distance === undefined || spacing === undefined || wall.masonry !== 'anchored') return;
    const reach = boundAt(distance, {});
    const small = smallOpening(limits);
    for (const survey of panels) {
      for (const edge of tieEdgesOf(survey, small)) {
        const { serving, measured } = tiesAtEdge(survey, edge, reach);
        const limit = serving.length === 0 ? distance : spacing;
        report({
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
