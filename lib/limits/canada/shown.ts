import type { Limit } from '../limit';
import { atLeast, atMost, byClause, exactly, noted, PRESENT, shareOfDepth } from '../rows';
import { NBC } from './nbc';
import { MORTARS } from './tables';

/** In the national text only, so far as it was read. */
export const NATIONAL_ONLY: readonly Limit[] = byClause(NBC, 'support', {
  '9.15.3.5': [
    atLeast('footing-for-veneer', 'Strip footing: wider, for each storey of veneer on a wood frame, by', 65),
    atLeast('footing-for-masonry', 'Strip footing: wider, for each storey of masonry, by', 130),
  ],
});

const FLASHING = 'Flashing, thickness of';

/** What the National Building Code also says: on the limits page, in lessons and questions; no check asks for it. */
export const CANADA_SHOWN: readonly Limit[] = [
  ...byClause(NBC, 'joints', {
    '9.20.4.1.(1) and (2)': exactly(
      'joint-design',
      'Head and bed joints of clay brick, thickness to work to',
      10,
    ),
    '9.20.4.2.(3)': noted(
      'The code says full, but for open weep holes and vents. 95 % is our reading of full: as near as a probe can tell.',
      atLeast('bed-fill', 'Bed joint of solid units, share of its area that is filled', 95, '%'),
    ),
  }),
  ...byClause(NBC, 'openings', {
    '9.20.5.2': exactly(
      'lintel-corrosion',
      'Steel lintel, paint or other protection from rust',
      PRESENT,
      'there or not',
    ),
  }),
  ...byClause(NBC, 'ties', {
    '9.20.9.5.(1)': [
      ...noted(
        'Bent to a right angle in the works. TMS 402 allows 1/2 in, BIA 5/8 in.',
        atMost('tie-bend', 'Strap tie, from the hole of its fastener to the bend', 6),
      ),
      atLeast('tie-screw-diameter', 'Screw of a tie, diameter', 4.16),
      atLeast('tie-screw-grip', 'Screw of a tie, length in the wood', 38),
      atLeast('tie-nail-length', 'Spiral nail of a tie, length', 76),
      atLeast('tie-nail-grip', 'Spiral nail of a tie, length in the wood', 63),
    ],
    'Table 9.20.16.1': atLeast(
      'tie-zinc',
      'Strap tie under 3.18 mm (1/8 in) thick, zinc coating',
      460,
      'g/m²',
    ),
    '9.20.9.4': noted(
      'For ties between two masonry wythes. The code gives no such figure for veneer on a frame, so good practice is used there.',
      atMost('wythe-tie-edge-distance', 'Ties of a two-wythe wall, distance from an opening', 300),
      atMost('wythe-tie-edge-spacing', 'Ties of a two-wythe wall, spacing round an opening', 900),
      atMost('wythe-tie-vertical', 'Ties of a cavity wall, vertical spacing', 400),
      atMost('wythe-tie-horizontal', 'Ties of a cavity wall, horizontal spacing', 900),
    ),
  }),
  ...byClause(NBC, 'mortar', {
    '9.20.3.1': [
      atLeast('lime-soak-hydrate', 'Lime putty of hydrated lime, soaked for', 12, 'hours'),
      atLeast('lime-soak-quicklime', 'Lime putty of quicklime, slaked for', 24, 'hours'),
    ],
    'Table 9.20.3.2.-B': noted(
      'Table 9.20.3.2.-A asks for type N or S in veneer above ground.',
      exactly(
        'mortar-proportions',
        'Mortar types by volume, sand damp and loose',
        { form: 'mortar-table', rows: MORTARS },
        'table',
      ),
    ),
  }),
  ...byClause(NBC, 'height and thickness', {
    '9.20.6.4.(1)': atLeast('veneer-thickness', 'Veneer on a bearing support, thickness of solid units', 75),
    '9.20.1.1.(1)': noted(
      'Higher masonry is designed by an engineer.',
      atMost('wall-height', 'Height of unreinforced masonry and veneer above the foundation wall', 11, 'm'),
    ),
    '9.20.6.5': [
      atMost('parapet-height', 'Parapet, height over its own thickness', 3, 'times'),
      atLeast('parapet-solid', 'Parapet, solid from this far below the roof', 300),
    ],
    '9.20.6.2': [
      atLeast('cavity-least', 'Cavity between two masonry wythes: least width', 50),
      atMost('cavity-most', 'Cavity between two masonry wythes: greatest width', 150),
    ],
  }),
  ...byClause(NBC, 'support', {
    '9.20.12.1': [
      ...noted('Solid units only.', atMost('corbel-unit', 'Corbel, projection of each unit', 25)),
      atMost(
        'corbel-total',
        'Corbel, whole projection, as a share of the wall thickness',
        shareOfDepth(1 / 3),
      ),
    ],
    '9.20.11.5': [
      atLeast('trim-inside', 'Cornice, sill or trim without anchors: mass inside the wall', 65, '%'),
      atLeast('trim-bearing', 'Cornice, sill or trim without anchors: length inside the wall', 90),
    ],
    '9.20.8.3': [
      atLeast('beam-bearing', 'Beam, bearing on masonry', 90),
      atLeast('joist-bearing', 'Joist, bearing on masonry', 40),
    ],
  }),
  ...byClause(NBC, 'bond', {
    '9.20.9.1': noted(
      'Only where the vertical joints of courses are not offset. No lap is given a figure.',
      atMost('stack-bond-steel', 'Stack bond: bars in bed joints, spacing up the wall', 460),
      atLeast('stack-bond-bar', 'Stack bond: two bars, diameter of each', 3.76),
      atLeast('stack-bond-lap', 'Stack bond: lap of bars', 150),
    ),
  }),
  ...byClause(NBC, 'water', {
    '9.20.6.4.(2)': atLeast('air-space', 'Clear air space behind veneer on a wood frame', 25),
    '9.20.13.5': atLeast('flashing-into-wythe', 'Flashing under weep holes, into a masonry backing', 25),
    '9.20.13.7': exactly('flashing-joints', 'Joints of flashing, watertight', PRESENT, 'there or not'),
    '9.20.13.3': atMost(
      'head-without-flashing',
      'Opening without head flashing: from frame to eave, over the width of the eave overhang',
      0.25,
      'times',
    ),
    '9.20.13.12': atLeast('sill-drip', 'Sill without flashing: drip, from the face of the wall', 25),
    '9.20.13.10': exactly(
      'cavity-clear',
      'Cavity clear of mortar that would bridge it',
      PRESENT,
      'there or not',
    ),
    'Table 9.20.13.1': [
      atLeast('flashing-steel', `${FLASHING} galvanized steel`, 0.33),
      atLeast('flashing-copper', `${FLASHING} copper`, 0.46),
      atLeast('flashing-zinc', `${FLASHING} zinc`, 0.46),
      atLeast('flashing-lead', `${FLASHING} lead sheet`, 1.73),
      atLeast('flashing-aluminium', `${FLASHING} aluminium, where it shows`, 0.48),
      atLeast('flashing-polyethylene', `${FLASHING} polyethylene, where it is covered`, 0.5),
      atLeast('flashing-laminated', `${FLASHING} aluminium or copper on felt, where it is covered`, 0.05),
    ],
  }),
  ...byClause(NBC, 'weather', {
    '9.20.14.1': [
      ...noted(
        'No frozen materials.',
        atLeast('laying-temperature', 'Mortar and masonry while it is laid, temperature', 5, '°C'),
      ),
      atLeast('kept-warm', 'Masonry kept at that temperature after laying', 48, 'hours'),
    ],
    '9.20.14.2': exactly(
      'top-covered',
      'Waterproof cover on unfinished tops when work stops',
      PRESENT,
      'there or not',
    ),
  }),
];
