import { inches } from '../../units';
import type { Limit } from '../limit';
import { atLeast, atMost, exactly, PRESENT, shareOfDepth, under } from '../rows';
import { IBC, IRC } from './irc';

const METRE = 1000;
const metres = (feet: number, inch = 0) => inches(inch, feet) / METRE;
const LONG_OPENING = 'Long opening without a table span:';

/** Sizes, bond, long openings and water: shown on the limits page, asked for by no check yet. */
export const UNITED_STATES_WALL: readonly Limit[] = [
  ...under(
    { ...IRC, topic: 'height and thickness', clause: 'R703.8' },
    atMost('veneer-thickness-most', 'Anchored veneer over a wood or steel frame, thickness', inches(5)),
  ),
  ...under(
    { ...IRC, topic: 'height and thickness', clause: 'Table R703.8(1)' },
    atMost(
      'veneer-height',
      'Anchored veneer above its foundation, Seismic Design Categories A to C',
      metres(30),
      'm',
      {
        note: 'A gable may go 8 ft (2.44 m) higher.',
      },
    ),
  ),
  ...under(
    { ...IRC, topic: 'height and thickness', clause: 'Table R703.8(2)' },
    atMost(
      'veneer-height-seismic',
      'Anchored veneer above its foundation, Seismic Design Category D',
      metres(20),
      'm',
      {
        note: 'A gable may go 8 ft (2.44 m) higher; the table lists cases of 30 ft.',
      },
    ),
  ),
  ...under(
    { ...IRC, topic: 'height and thickness', clause: 'R703.8.2' },
    atMost('veneer-weight-on-wood', 'Veneer that stands on wood or steel framing, weight', 195, 'kg/m²', {
      note: 'The code prints 40 psf first. Not in Seismic Design Category D.',
    }),
    atLeast('span-over-deflection', 'Framing under veneer: span over its deflection', 600, 'times'),
  ),
  ...under(
    { ...IRC, topic: 'height and thickness', clause: 'R703.8.2.1; R703.8.2.2' },
    atMost(
      'height-above-roof-angle',
      'Veneer above an angle on a roof or framed wall, height',
      metres(12, 8),
      'm',
    ),
  ),
  ...under(
    { ...IBC, topic: 'height and thickness', clause: 'Table 1404.2' },
    atLeast('veneer-thickness', 'Anchored veneer other than stone or cast stone, thickness', inches(2)),
    atLeast('cast-stone-thickness', 'Anchored cast stone veneer, thickness', inches(2.5)),
    atLeast('adhered-thickness', 'Adhered masonry veneer, thickness', inches(1 / 4)),
  ),
  ...under(
    { ...IRC, topic: 'bond', clause: 'R606.3.7.1' },
    atLeast(
      'bond-lap',
      'Running bond: head joints of neighbouring courses apart, of the unit length',
      25,
      '%',
    ),
  ),
  ...under(
    { ...IRC, topic: 'bond', clause: 'R606.3.7.2' },
    atMost('stack-bond-steel', 'Less lap than that: steel in bed joints, spacing up the wall', inches(48)),
  ),
  ...under(
    { ...IRC, topic: 'support', clause: 'R606.5.2', note: 'The smaller of the two governs each unit.' },
    atMost('corbel-unit', 'Corbel, projection of each unit past the one below', shareOfDepth(1 / 3)),
    atMost('corbel-unit-height', 'Corbel, projection of each unit, of its height', 50, '%'),
    atMost('corbel-total', 'Corbelled veneer, whole projection', shareOfDepth(1 / 2), 'mm', {
      note: 'Half the wythe for veneer, half the wall where wythes are bonded together.',
    }),
  ),
  ...under(
    { ...IRC, topic: 'support', clause: 'R606.6.2' },
    atMost('foundation-corbel', 'Top of an 8 in foundation corbelled under veneer, in all', inches(2)),
  ),
  ...under(
    { ...IRC, topic: 'openings', clause: 'R703.8.3.2' },
    atMost('long-opening', `${LONG_OPENING} width, on a 5 × 3 1/2 × 5/16 in angle`, inches(3, 18)),
    atLeast('long-opening-side', `${LONG_OPENING} veneer each side`, inches(18)),
    atLeast('long-opening-wire', `${LONG_OPENING} joint reinforcement past each side`, inches(12)),
    atLeast('long-opening-props', `${LONG_OPENING} props stay for`, 7, 'days'),
  ),
  ...under(
    { ...IRC, topic: 'openings', clause: 'Table R703.8.3.2' },
    atLeast('long-opening-under-5', `${LONG_OPENING} reinforced height, veneer above under 5 ft`, inches(13)),
    atLeast(
      'long-opening-under-12',
      `${LONG_OPENING} reinforced height, veneer above under 12 ft`,
      inches(24),
    ),
    atLeast(
      'long-opening-over-12',
      `${LONG_OPENING} reinforced height, veneer above 12 ft or more`,
      inches(60),
    ),
  ),
  ...under(
    { ...IRC, topic: 'water', clause: 'R703.8.5' },
    exactly(
      'flashing-present',
      'Flashing under the first course above ground and at every support',
      PRESENT,
      'there or not',
    ),
  ),
  ...under(
    { ...IRC, topic: 'water', clause: 'R703.8.6' },
    atMost('weep-spacing', 'Weep holes, spacing along the wall', inches(33)),
    atLeast('weep-size', 'Weep hole, diameter', inches(3 / 16), 'mm', {
      note: 'Directly above the flashing.',
    }),
  ),
  ...under(
    { ...IBC, topic: 'water', clause: '1404.4.2' },
    atMost('flashing-above-ground', 'Base flashing and weep holes above finished ground', inches(10), 'mm', {
      note: 'The code prints 245 mm beside 10 in: a slip. The inches are right.',
    }),
  ),
  ...under(
    {
      ...IRC,
      topic: 'keeping people away',
      source: 'osha-1926-706',
      edition: '29 CFR 1926.706',
      clause: '(a), (b)',
      howSure: 'second-hand',
      note: 'Law on building sites, for walls being built: only those who build it may go there. It says nothing of an old wall that is loose.',
    },
    atLeast(
      'keep-out-beside',
      'Wall being built: people kept away along it, beyond its own height',
      inches(0, 4),
    ),
    atMost('unbraced-height', 'Wall being built without bracing, height', inches(0, 8)),
  ),
];
