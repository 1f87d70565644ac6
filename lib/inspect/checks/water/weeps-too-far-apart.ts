import { boundAt } from '../../../limits/bound';
import { tellsDrainage, type WeepGap, weepGapsOf } from '../../../wall/drainage';
import type { Check } from '../../check';
import { boxOf } from '../../places';

/**
 * Walls that tell how they drain, each flashing: the course right on it, in runs of neighbours. Along each run, as far as the flashing lies under
 * it: from each weep to the next, middle to middle, and from either end of the run to the first and the last (without a weep, the whole run),
 * against `weep-spacing`. Parts: the head joints in between that are no weeps, the nearest to the middle first, of equal ones the left (a unit
 * where there is none). Shown: the units that stand along it, no further than it goes.
 */
export const weepsTooFarApart: Check = {
  id: 'weeps-too-far-apart',
  name: 'Weeps too far apart',
  alsoCalled:
    'missing weep, no weeps, weep hole left out, no weep holes, filled weep, weep vents too far apart, drainage holes missing',
  looksLike: 'There is a long stretch without an open slot in the course right on a flashing.',
  whereToLook: 'Front view, close up, along the bottom course and over each opening.',
  measuredBy:
    'Measure along the course from the middle of one weep to the middle of the next, or to where the course ends.',
  whyItMatters:
    'The water on the flashing finds no way out there. It stands in the wall, and frost and rot follow.',
  putsRight:
    'A mason who knows where the flashing lies opens more head joints right on it. Drilling anywhere else makes a hole in the flashing.',
  caughtAt: 'As the course on the flashing is laid',
  mistakenFor: ['weep-openings', 'open-head'],
  markedOn: ['head'],
  hazard: 'lets water in',
  reach: 'in sight',
  lesson: 'keeping-water-out',
  asks: { what: 'From weep to weep', unit: 'mm' },
  tooNear: 2,
  measure: (survey, limits, report) => {
    const limit = limits('weep-spacing');
    if (limit === undefined || !tellsDrainage(survey.wall)) return;
    const bound = boundAt(limit, {});
    for (const panel of survey.panels) {
      for (const flashing of survey.wall.flashings) {
        if (flashing.panel !== panel.panel.id) continue;
        for (const gap of weepGapsOf(survey, panel, flashing)) {
          const parts = partsOf(gap);
          const [at] = parts;
          if (at === undefined) continue;
          report({
            limit,
            end: 'at most',
            measured: gap.to - gap.from,
            bound,
            at,
            place: () => ({
              parts,
              region: { ...boxOf(gap.units), x: gap.from, width: gap.to - gap.from },
            }),
          });
        }
      }
    }
  },
};

function partsOf({ from, to, heads, units }: WeepGap) {
  const middle = (from + to) / 2;
  const nearest = [...heads].sort((a, b) => Math.abs(a.middle - middle) - Math.abs(b.middle - middle));
  return heads.length > 0 ? nearest.map(({ id }) => id) : units.map(({ unit }) => unit.id);
}
