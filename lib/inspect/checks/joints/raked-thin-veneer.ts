import { boundAt } from '../../../limits/bound';
import type { Check } from '../../check';
import { panelBox } from '../../places';

/**
 * Each panel: how far its mortar lies behind the face, against `rake-on-thin-veneer` for the depth of the family. Parts: the panel.
 */
export const rakedThinVeneer: Check = {
  id: 'raked-thin-veneer',
  name: 'Raked joints on thin veneer',
  alsoCalled: 'recessed joints, raked-out joints, joints set back, slips with raked joints, thin brick raked',
  looksLike: 'Every joint lies back from the face and leaves a small shelf, and the units are thin.',
  whereToLook: 'Front view for the shadow in the joints, then the section for the depth of the units.',
  measuredBy: 'Measure how far the mortar lies behind the face, and how deep the units are.',
  whyItMatters:
    'Water rests on each shelf and soaks in. In a thin unit, little mortar is left to keep it out and to cover the ties.',
  putsRight: 'The mason fills the joints out and tools them, so that no shelf is left.',
  caughtAt: 'When the first joints are tooled',
  mistakenFor: ['raked-on-thick-veneer'],
  ofPanel: [],
  markedOn: ['panel'],
  hazard: 'lets water in',
  reach: 'in sight',
  lesson: 'full-joints',
  asks: { what: 'How far the mortar lies back', unit: 'mm' },
  tooNear: 0,
  measure: ({ wall, panels }, limits, report) => {
    const limit = limits('rake-on-thin-veneer');
    if (limit === undefined) return;
    const bound = boundAt(limit, { depth: wall.family.depth });
    for (const survey of panels) {
      const { panel } = survey;
      report({
        limit,
        end: 'at most',
        measured: panel.recess,
        bound,
        at: panel.id,
        place: () => ({ parts: [panel.id], region: panelBox(survey) }),
      });
    }
  },
};
