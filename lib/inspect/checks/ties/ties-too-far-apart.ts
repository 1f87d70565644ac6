import { boundAt, smallOpening, spacingVerdict } from '../../../limits/bound';
import { type TieGap, tieEdgesOf, tieGapsOf, tiesAtEdge } from '../../../wall/tie-field';
import { type Check, severityOf } from '../../check';
import type { Region } from '../../finding';
import { joined } from '../../places';

/**
 * Anchored walls, each panel. Ties stand in columns, each with the stud nearest to it; a column's x is its stud's. Measured are the gaps between
 * successive ties of a column, but two kinds: where an opening with that x strictly inside it takes some of the gap; and beside an edge that
 * no-tie-at-edge finds, in a column that serves it, where the gap takes some of the edge's span.
 *
 * A gap's width is the greater of the distances to the next columns left and right. A side does not count where an opening lies between the two
 * columns and takes in the whole height of the gap. Height and width are tried together against `tie-spacing`: some row must allow both, or
 * both spacings and the area. Too wide for any row: the width against the widest; else the height against the most allowed at that width.
 *
 * One finding a panel, its worst gap by measured ÷ limit. Parts: the panel. Region: from the left column to the right one, between the two ties.
 */
export const tiesTooFarApart: Check = {
  id: 'ties-too-far-apart',
  name: 'Ties too far apart',
  alsoCalled: 'too few ties, wide tie spacing, missing wall ties, missing brick ties, missing anchors',
  looksLike: 'A bare stretch of backing has no tie in it, up and down or side to side.',
  whereToLook: 'Before cover: the backing with its ties. The finished front shows nothing.',
  measuredBy:
    'Measure from tie to tie, up and across, and where the rules ask for it the area each tie holds.',
  whyItMatters:
    'Ties hold the wall back in wind and in an earthquake. Where they are missing, it can be pulled off.',
  putsRight:
    'Before cover, the mason adds ties fixed to the studs. In a finished wall, keep people away. A licensed engineer decides how ties are added.',
  caughtAt: 'At every row of ties, with a photo before the brick covers it',
  mistakenFor: ['no-tie-at-edge'],
  markedOn: ['panel'],
  hazard: 'could fall',
  reach: 'out of sight',
  lesson: 'ties',
  asks: { what: 'Widest gap between ties', unit: 'mm' },
  tooNear: 5,
  measure: ({ wall, panels }, limits, report) => {
    const limit = limits('tie-spacing');
    const distance = limits('tie-edge-distance');
    const upEdge = limits('tie-edge-spacing');
    const reach = distance ? boundAt(distance, {}) : 0;
    const mostUpEdge = upEdge ? boundAt(upEdge, {}) : 0;
    const small = smallOpening(limits);
    if (limit === undefined || wall.masonry !== 'anchored') return;
    for (const survey of panels) {
      const { panel } = survey;
      const bare = tieEdgesOf(survey, small).filter((edge) => {
        const { serving, measured } = tiesAtEdge(survey, edge, reach);
        return serving.length === 0 ? measured > reach : measured > mostUpEdge;
      });
      const gaps = tieGapsOf(survey, bare, reach);
      const measurements = gaps.map((gap) => {
        const { measured, limit: bound } = spacingVerdict(limit.bound, gap.vertical, gap.horizontal);
        return { gap, sight: { limit, end: 'at most', measured, bound, unit: 'mm', at: panel.id } as const };
      });
      const [first] = measurements;
      if (first === undefined) continue;
      const worst = measurements.reduce(
        (most, each) => (severityOf(each.sight) > severityOf(most.sight) ? each : most),
        first,
      );
      report({
        ...worst.sight,
        place: () => {
          const alike = measurements.filter(({ sight }) => severityOf(sight) === severityOf(worst.sight));
          return { parts: [panel.id], region: joined(alike.map(({ gap }) => gapBox(gap, panel.id))) };
        },
      });
    }
  },
};

function gapBox({ leftX, rightX, lower, vertical }: TieGap, panel: string): Region {
  return { panel, x: leftX, y: lower.y, width: rightX - leftX, height: vertical };
}
