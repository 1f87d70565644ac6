import { inches, squareFeet } from '../../units';
import type { Limit } from '../limit';
import { atLeast, atMost, exactly, PRESENT, under } from '../rows';
import { IRC } from './irc';
import { MORTARS, PAIRED_ANGLES, SAND_LEAST } from './tables';

const JOINTS: readonly Limit[] = [
  ...under(
    { ...IRC, topic: 'joints', clause: 'R606.3.1' },
    exactly('joint-design', 'Head and bed joints, thickness to work to', inches(3 / 8)),
  ),
  ...under(
    {
      ...IRC,
      topic: 'joints',
      clause: 'R606.3.1',
      note: 'Binds load-bearing masonry only. Veneer has no figure of its own here, so good practice is used for it.',
    },
    atMost('load-bearing-bed-most', 'Bed joint of load-bearing masonry: greatest thickness', inches(1 / 2)),
    atMost('load-bearing-head-most', 'Head joint of load-bearing masonry: greatest width', inches(3 / 4)),
    atLeast('load-bearing-head-least', 'Head joint of load-bearing masonry: least width', inches(1 / 8)),
    atMost('load-bearing-collar-most', 'Collar joint of load-bearing masonry: greatest width', inches(3 / 4)),
    atLeast('load-bearing-collar-least', 'Collar joint of load-bearing masonry: least width', inches(1 / 8)),
  ),
  ...under(
    {
      ...IRC,
      topic: 'joints',
      clause: 'R606.3.2.1',
      note: 'The code says full head and bed joints. 95 % is our reading of full: as near as a probe can tell.',
    },
    atLeast('bed-fill', 'Bed joint of solid units, share of its area that is filled', 95, '%'),
  ),
];

const OPENINGS: readonly Limit[] = [
  ...under(
    { ...IRC, topic: 'openings', clause: 'R703.8.3' },
    exactly('lintel-corrosion', 'Steel lintel, paint against rust', PRESENT, 'there or not'),
  ),
];

const TIES: readonly Limit[] = [
  ...under(
    { ...IRC, topic: 'ties', clause: 'R703.8.4.1' },
    atMost(
      'tie-area-high-wind',
      'Wall area of each tie: wind over 30 psf, or Seismic Design Category D, or townhouses in C',
      squareFeet(2),
      'mm²',
    ),
    atLeast('tie-wire', 'Wire tie, diameter (No. 9 gage), with a hook in the joint', inches(0.148)),
  ),
  ...under(
    { ...IRC, topic: 'ties', clause: 'Table R703.8.4(1)' },
    atLeast('tie-nail-length', 'Nail of a tie into wood studs, length', inches(2.5)),
    atLeast('tie-nail-diameter', 'Nail of a tie into wood studs, diameter', inches(0.131)),
    exactly('air-space-strap', 'Air space behind veneer on corrugated straps', inches(1), 'mm', {
      note: 'A size to work to: the code says nominal.',
    }),
    atLeast('air-space', 'Air space behind veneer on wire ties', inches(1)),
    atMost('backing-to-veneer', 'Backing to the back of veneer on wire ties', inches(4 + 5 / 8), 'mm', {
      note: '4 1/2 in in the editions of 2015 and 2018. Thicker wire may reach 6 5/8 in.',
    }),
    atMost('tie-offset', 'Adjustable tie, its two pieces out of line', inches(1.25)),
  ),
];

const TABLES: readonly Limit[] = [
  ...under(
    { ...IRC, topic: 'openings', clause: 'Table R703.8.3.1' },
    atLeast(
      'angle-pair-size',
      'Two steel angles over an opening in veneer, by clear span and storeys above',
      { form: 'angle-table', caseBy: 'storeys above', rows: PAIRED_ANGLES },
      'table',
    ),
  ),
  ...under(
    { ...IRC, topic: 'mortar', clause: 'Table R606.2.8' },
    exactly(
      'mortar-proportions',
      'Mortar types by volume, sand damp and loose',
      { form: 'mortar-table', rows: MORTARS },
      'table',
      {
        note: 'The proportion table of ASTM C270. Lime: over the first figure, up to the second. Sand is worked out here for the least and most lime of each row; the two sand ratios bind.',
      },
    ),
    atLeast(
      'sand-ratio-least',
      'Sand, the least, in volumes to one of cement and lime together',
      SAND_LEAST,
      'volumes',
    ),
  ),
];

/** What the International Residential Code also says: on the limits page, in lessons and questions; no check asks for it. */
export const UNITED_STATES_SHOWN: readonly Limit[] = [...JOINTS, ...OPENINGS, ...TIES, ...TABLES];
