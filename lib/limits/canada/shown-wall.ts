import type { Limit } from '../limit';
import { atLeast, atMost, shareOfDepth, under } from '../rows';
import { NBC } from './nbc';

/** Sizes of the wall and its bond: shown on the limits page, asked for by no check yet. */
export const CANADA_WALL: readonly Limit[] = [
  ...under(
    { ...NBC, topic: 'height and thickness', clause: '9.20.6.4.(1)' },
    atLeast('veneer-thickness', 'Veneer on a bearing support, thickness of solid units', 75),
  ),
  ...under(
    { ...NBC, topic: 'height and thickness', clause: '9.20.1.1.(1)' },
    atMost('wall-height', 'Height of unreinforced masonry and veneer above the foundation wall', 11, 'm', {
      note: 'Higher masonry is designed by an engineer.',
    }),
  ),
  ...under(
    { ...NBC, topic: 'height and thickness', clause: '9.20.6.5' },
    atMost('parapet-height', 'Parapet, height over its own thickness', 3, 'times'),
    atLeast('parapet-solid', 'Parapet, solid from this far below the roof', 300),
  ),
  ...under(
    { ...NBC, topic: 'height and thickness', clause: '9.20.6.2' },
    atLeast('cavity-least', 'Cavity between two masonry wythes: least width', 50),
    atMost('cavity-most', 'Cavity between two masonry wythes: greatest width', 150),
  ),
  ...under(
    { ...NBC, topic: 'support', clause: '9.20.12.1' },
    atMost('corbel-unit', 'Corbel, projection of each unit', 25, 'mm', { note: 'Solid units only.' }),
    atMost('corbel-total', 'Corbel, whole projection, as a share of the wall thickness', shareOfDepth(1 / 3)),
  ),
  ...under(
    { ...NBC, topic: 'support', clause: '9.20.11.5' },
    atLeast('trim-inside', 'Cornice, sill or trim without anchors: mass inside the wall', 65, '%'),
    atLeast('trim-bearing', 'Cornice, sill or trim without anchors: length inside the wall', 90),
  ),
  ...under(
    { ...NBC, topic: 'support', clause: '9.20.8.3' },
    atLeast('beam-bearing', 'Beam, bearing on masonry', 90),
    atLeast('joist-bearing', 'Joist, bearing on masonry', 40),
  ),
  ...under(
    {
      ...NBC,
      topic: 'bond',
      clause: '9.20.9.1',
      note: 'Only where the vertical joints of courses are not offset. No lap is given a figure.',
    },
    atMost('stack-bond-steel', 'Stack bond: bars in bed joints, spacing up the wall', 460),
    atLeast('stack-bond-bar', 'Stack bond: two bars, diameter of each', 3.76),
    atLeast('stack-bond-lap', 'Stack bond: lap of bars', 150),
  ),
];

/** In the national text only, so far as it was read. */
export const NATIONAL_ONLY: readonly Limit[] = under(
  { ...NBC, topic: 'support', clause: '9.15.3.5' },
  atLeast('footing-for-veneer', 'Strip footing: wider, for each storey of veneer on a wood frame, by', 65),
  atLeast('footing-for-masonry', 'Strip footing: wider, for each storey of masonry, by', 130),
);
