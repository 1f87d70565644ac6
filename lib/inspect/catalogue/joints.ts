import type { CatalogueRow } from '../catalogue-row';
import type { CheckId } from '../finding';

/** What can be wrong with the mortar between two units. */
export const JOINT_ROWS = {
  'tapering-bed': {
    name: 'Bed joint tapers',
    alsoCalled: ['wedge joint', 'wedge-shaped bed', 'uneven bed', 'dipping brick', 'tipped brick'],
    looksLike: 'The joint under one unit is a wedge, thick at one end and thin at the other.',
    whereToLook: 'Front view, close up, along the underside of single units.',
    measuredBy: 'Measure the bed joint at both ends of one unit and take the difference.',
    whyItMatters: 'The eye catches a wedge at once. The next course starts from a slope and carries it on.',
    putsRight:
      'While the mortar is fresh, the mason lifts the unit and beds it again. Later, the mason takes the course down to that place and lays it anew.',
    caughtAt: 'Before the next course is laid',
    mistakenFor: ['course-off-level', 'handmade-size-range'],
    hazard: 'looks',
    reach: 'in sight',
    scope: 'joint',
  },
  'thick-joint': {
    name: 'Joint too thick',
    alsoCalled: ['fat joint', 'fat bed', 'wide joint', 'heavy bed', 'thick perp', 'oversize joint'],
    looksLike: 'A band of mortar is plainly thicker than the joints around it.',
    whereToLook: 'Front view. Compare beds with beds, and head joints with head joints.',
    measuredBy:
      'Measure the joint; a bed is the mean of both ends, and some rules compare it with the beds around it.',
    whyItMatters:
      'A thick joint shrinks more as it dries and can open at the edges. It also spoils the pattern.',
    putsRight:
      'The mason sets out the courses still to come again. The worst joints are taken down and laid anew, never hidden by wide tooling.',
    caughtAt: 'With a joint gauge, before each lift of scaffold goes up',
    mistakenFor: [
      'thick-first-bed',
      'gauge-drift',
      'handmade-size-range',
      'chipped-corners',
      'mortar-smears',
    ],
    hazard: 'looks',
    reach: 'in sight',
    scope: 'joint',
  },
  'thin-joint': {
    name: 'Joint too thin',
    alsoCalled: ['tight joint', 'pinched joint', 'narrow joint', 'skinny joint', 'tight perp'],
    looksLike: 'Two units almost touch, with only a thread of mortar between them.',
    whereToLook: 'Front view. Look near openings and ends, where space ran short.',
    measuredBy:
      'Measure the joint; a bed is the mean of both ends, and some rules compare it with the beds around it.',
    whyItMatters:
      'Too little mortar holds badly and lets rain in. In a thin bed, a tie has no room for mortar around it.',
    putsRight:
      'The mason spreads the space over many joints before going on. The worst units are taken out and laid anew.',
    caughtAt: 'When the first course is set out dry, then at each course',
    mistakenFor: ['gauge-drift', 'handmade-size-range'],
    hazard: 'lets water in',
    reach: 'in sight',
    scope: 'joint',
  },
  'open-head': {
    name: 'Open head joint',
    alsoCalled: [
      'bee hole',
      'unfilled perp',
      'open perpend',
      'open cross joint',
      'pinhole',
      'clip joint',
      'tip-buttered',
      'vertical joint not filled',
    ],
    looksLike: 'A dark slot or hole shows between two units of one course.',
    whereToLook: 'Front view, close up. Behind a lifted unit you see how far the gap goes in.',
    measuredBy: 'Probe the joint, or lift the unit beside it, and judge what share of it is filled.',
    whyItMatters:
      'Wind drives rain straight through an open head joint. Frost then breaks the mortar around it.',
    putsRight:
      'The mason rakes the joint out, packs it with mortar in layers and tools it. Leave weeps open. A whole panel of open joints has to be rebuilt.',
    caughtAt: 'As each course is laid; in depth, when a unit is lifted',
    mistakenFor: ['weep-openings'],
    hazard: 'lets water in',
    reach: 'out of sight',
    scope: 'joint',
  },
  'raked-thin-veneer': {
    name: 'Raked joints on thin veneer',
    alsoCalled: [
      'recessed joints',
      'raked-out joints',
      'joints set back',
      'slips with raked joints',
      'thin brick raked',
    ],
    looksLike: 'Every joint lies back from the face and leaves a small shelf, and the units are thin.',
    whereToLook: 'Front view for the shadow in the joints, then the section for the depth of the units.',
    measuredBy: 'Measure how far the mortar lies behind the face, and how deep the units are.',
    whyItMatters:
      'Water rests on each shelf and soaks in. In a thin unit, little mortar is left to keep it out and to cover the ties.',
    putsRight: 'The mason fills the joints out and tools them, so that no shelf is left.',
    caughtAt: 'When the first joints are tooled',
    mistakenFor: ['raked-on-thick-veneer'],
    hazard: 'lets water in',
    reach: 'in sight',
    scope: 'panel',
  },
} satisfies Partial<Record<CheckId, CatalogueRow>>;
