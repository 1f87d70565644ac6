import { boundAt } from '../../../limits/bound';
import type { PanelSurvey, Placed } from '../../../wall/survey';
import type { Check } from '../../check';
import { boxOf } from '../../places';

/**
 * Anchored walls, each panel: of the length of course 1, the share that lies over ledges of concrete, steel or masonry, against
 * `supported-share`. Wood carries no veneer. Parts: the panel's ledges in order (the panel where it has none), then the units that are not
 * carried over their whole length, from the left.
 */
export const noBearingReturn: Check = {
  id: 'no-bearing-return',
  name: 'No bearing under part of the wall',
  alsoCalled:
    'unsupported return, no ledge, floating corner, hanging brick, brick on wood, brick on timber, nothing under it',
  looksLike: 'Part of the bottom course stands on nothing, or on wood.',
  whereToLook: 'Front view along the base, then the section. Look at ends, corners and above roofs.',
  measuredBy:
    'Measure how much of the bottom course stands on concrete, steel or masonry, and compare it with the whole length.',
  whyItMatters:
    'Mortar and ties alone cannot carry the weight. Wood shrinks and rots, and then the wall drops.',
  putsRight:
    'Keep people away. A licensed engineer designs a support. A contractor props the wall and puts the support in.',
  caughtAt: 'When ledges and angles are ready, before the first course',
  mistakenFor: ['overhang-too-far', 'hidden-angle'],
  markedOn: ['support'],
  hazard: 'could fall',
  reach: 'in sight',
  lesson: 'what-carries-the-wall',
  asks: { what: 'Share of the bottom course that stands on something', unit: '%' },
  tooNear: 0,
  measure: ({ wall, panels }, limits, report) => {
    const limit = limits('supported-share');
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
      report({
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
