import { inches, squareFeet } from '../../units';
import type { Limit } from '../limit';
import { atLeast, atMost, byClause, exactly, noted, PRESENT, shareOfDepth } from '../rows';
import { IBC, IRC } from './irc';
import { MORTARS, PAIRED_ANGLES, SAND_LEAST } from './tables';

const METRE = 1000;

const metres = (feet: number, inch = 0) => inches(inch, feet) / METRE;

const LONG_OPENING = 'Long opening without a table span:';

/** What the International Residential Code also says: on the limits page, in lessons and questions; no check asks for it. */
export const UNITED_STATES_SHOWN: readonly Limit[] = [
  ...byClause(IRC, 'joints', {
    'R606.3.1': [
      exactly('joint-design', 'Head and bed joints, thickness to work to', inches(3 / 8)),
      ...noted(
        'Binds load-bearing masonry only. Veneer has no figure of its own here, so good practice is used for it.',
        atMost(
          'load-bearing-bed-most',
          'Bed joint of load-bearing masonry: greatest thickness',
          inches(1 / 2),
        ),
        atMost('load-bearing-head-most', 'Head joint of load-bearing masonry: greatest width', inches(3 / 4)),
        atLeast('load-bearing-head-least', 'Head joint of load-bearing masonry: least width', inches(1 / 8)),
        atMost(
          'load-bearing-collar-most',
          'Collar joint of load-bearing masonry: greatest width',
          inches(3 / 4),
        ),
        atLeast(
          'load-bearing-collar-least',
          'Collar joint of load-bearing masonry: least width',
          inches(1 / 8),
        ),
      ),
    ],
    'R606.3.2.1': noted(
      'The code says full head and bed joints. 95 % is our reading of full: as near as a probe can tell.',
      atLeast('bed-fill', 'Bed joint of solid units, share of its area that is filled', 95, '%'),
    ),
  }),
  ...byClause(IRC, 'openings', {
    'R703.8.3': exactly('lintel-corrosion', 'Steel lintel, paint against rust', PRESENT, 'there or not'),
  }),
  ...byClause(IRC, 'ties', {
    'R703.8.4.1': [
      atMost(
        'tie-area-high-wind',
        'Wall area of each tie: wind over 30 psf, or Seismic Design Category D, or townhouses in C',
        squareFeet(2),
        'mm²',
      ),
      atLeast('tie-wire', 'Wire tie, diameter (No. 9 gage), with a hook in the joint', inches(0.148)),
    ],
    'Table R703.8.4(1)': [
      atLeast('tie-nail-length', 'Nail of a tie into wood studs, length', inches(2.5)),
      atLeast('tie-nail-diameter', 'Nail of a tie into wood studs, diameter', inches(0.131)),
      ...noted(
        'A size to work to: the code says nominal.',
        exactly('air-space-strap', 'Air space behind veneer on corrugated straps', inches(1)),
      ),
      atLeast('air-space', 'Air space behind veneer on wire ties', inches(1)),
      ...noted(
        '4 1/2 in in the editions of 2015 and 2018. Thicker wire may reach 6 5/8 in.',
        atMost('backing-to-veneer', 'Backing to the back of veneer on wire ties', inches(4 + 5 / 8)),
      ),
      atMost('tie-offset', 'Adjustable tie, its two pieces out of line', inches(1.25)),
    ],
  }),
  ...byClause(IRC, 'openings', {
    'Table R703.8.3.1': atLeast(
      'angle-pair-size',
      'Two steel angles over an opening in veneer, by clear span and storeys above',
      { form: 'angle-table', caseBy: 'storeys above', rows: PAIRED_ANGLES },
      'table',
    ),
  }),
  ...byClause(IRC, 'mortar', {
    'Table R606.2.8': [
      ...noted(
        'The proportion table of ASTM C270. Lime: over the first figure, up to the second. Sand is worked out here for the least and most lime of each row; the two sand ratios bind.',
        exactly(
          'mortar-proportions',
          'Mortar types by volume, sand damp and loose',
          { form: 'mortar-table', rows: MORTARS },
          'table',
        ),
      ),
      atLeast(
        'sand-ratio-least',
        'Sand, the least, in volumes to one of cement and lime together',
        SAND_LEAST,
        'volumes',
      ),
    ],
  }),
  ...byClause(IRC, 'height and thickness', {
    'R703.8': atMost(
      'veneer-thickness-most',
      'Anchored veneer over a wood or steel frame, thickness',
      inches(5),
    ),
    'Table R703.8(1)': noted(
      'A gable may go 8 ft (2.44 m) higher.',
      atMost(
        'veneer-height',
        'Anchored veneer above its foundation, Seismic Design Categories A to C',
        metres(30),
        'm',
      ),
    ),
    'Table R703.8(2)': noted(
      'A gable may go 8 ft (2.44 m) higher; the table lists cases of 30 ft.',
      atMost(
        'veneer-height-seismic',
        'Anchored veneer above its foundation, Seismic Design Category D',
        metres(20),
        'm',
      ),
    ),
    'R703.8.2': [
      ...noted(
        'The code prints 40 psf first. Not in Seismic Design Category D.',
        atMost('veneer-weight-on-wood', 'Veneer that stands on wood or steel framing, weight', 195, 'kg/m²'),
      ),
      atLeast('span-over-deflection', 'Framing under veneer: span over its deflection', 600, 'times'),
    ],
    'R703.8.2.1; R703.8.2.2': atMost(
      'height-above-roof-angle',
      'Veneer above an angle on a roof or framed wall, height',
      metres(12, 8),
      'm',
    ),
  }),
  ...byClause(IBC, 'height and thickness', {
    'Table 1404.2': [
      atLeast('veneer-thickness', 'Anchored veneer other than stone or cast stone, thickness', inches(2)),
      atLeast('cast-stone-thickness', 'Anchored cast stone veneer, thickness', inches(2.5)),
      atLeast('adhered-thickness', 'Adhered masonry veneer, thickness', inches(1 / 4)),
    ],
  }),
  ...byClause(IRC, 'bond', {
    'R606.3.7.1': atLeast(
      'bond-lap',
      'Running bond: head joints of neighbouring courses apart, of the unit length',
      25,
      '%',
    ),
    'R606.3.7.2': atMost(
      'stack-bond-steel',
      'Less lap than that: steel in bed joints, spacing up the wall',
      inches(48),
    ),
  }),
  ...byClause(IRC, 'support', {
    'R606.5.2': [
      ...noted(
        'The smaller of the two governs each unit.',
        atMost('corbel-unit', 'Corbel, projection of each unit past the one below', shareOfDepth(1 / 3)),
        atMost('corbel-unit-height', 'Corbel, projection of each unit, of its height', 50, '%'),
      ),
      ...noted(
        'Half the wythe for veneer, half the wall where wythes are bonded together.',
        atMost('corbel-total', 'Corbelled veneer, whole projection', shareOfDepth(1 / 2)),
      ),
    ],
    'R606.6.2': atMost(
      'foundation-corbel',
      'Top of an 8 in foundation corbelled under veneer, in all',
      inches(2),
    ),
  }),
  ...byClause(IRC, 'openings', {
    'R703.8.3.2': [
      atMost('long-opening', `${LONG_OPENING} width, on a 5 × 3 1/2 × 5/16 in angle`, inches(3, 18)),
      atLeast('long-opening-side', `${LONG_OPENING} veneer each side`, inches(18)),
      atLeast('long-opening-wire', `${LONG_OPENING} joint reinforcement past each side`, inches(12)),
      atLeast('long-opening-props', `${LONG_OPENING} props stay for`, 7, 'days'),
    ],
    'Table R703.8.3.2': [
      atLeast(
        'long-opening-under-5',
        `${LONG_OPENING} reinforced height, veneer above under 5 ft`,
        inches(13),
      ),
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
    ],
  }),
  ...byClause(IBC, 'water', {
    '1404.4.2': noted(
      'The code prints 245 mm beside 10 in: a slip. The inches are right.',
      atMost('flashing-above-ground', 'Base flashing and weep holes above finished ground', inches(10)),
    ),
  }),
  ...byClause(
    { ...IRC, source: 'osha-1926-706', edition: '29 CFR 1926.706', howSure: 'second-hand' },
    'keeping people away',
    {
      '(a), (b)': noted(
        'Law on building sites, for walls being built: only those who build it may go there. It says nothing of an old wall that is loose.',
        atLeast(
          'keep-out-beside',
          'Wall being built: people kept away along it, beyond its own height',
          inches(0, 4),
        ),
        atMost('unbraced-height', 'Wall being built without bracing, height', inches(0, 8)),
      ),
    },
  ),
];
