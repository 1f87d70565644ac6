import { inches } from '../../units';
import type { Limit } from '../limit';
import { atLeast, atMost, exactly, under } from '../rows';
import { PRACTICE } from './practice';

const BIA_28B = {
  ...PRACTICE,
  source: 'bia-28b',
  edition: 'BIA Technical Note 28B, December 2005',
  clause: 'summary of recommendations',
} as const;
const BIA_18A = {
  ...PRACTICE,
  topic: 'movement',
  source: 'bia-18a',
  edition: 'BIA Technical Note 18A, 2019',
  clause: 'summary',
} as const;
const BEALL = {
  ...PRACTICE,
  source: 'beall-2004',
  edition: 'Beall, Masonry and Concrete',
  howSure: 'second-hand',
} as const;
const NEW_ZEALAND = {
  ...PRACTICE,
  howSure: 'second-hand',
  source: 'nzs-4210',
  edition: 'NZS 4210:2001',
} as const;
const AUSTRALIA = {
  ...PRACTICE,
  kind: 'code minimum',
  source: 'abcb-2022',
  edition: 'ABCB Housing Provisions, NCC 2022',
  note: 'An Australian rule, shown to compare. No check uses it.',
} as const;
const METRE = 1000;
const metres = (feet: number) => inches(0, feet) / METRE;

/** Sizes, water, movement and the look of the face: shown on the limits page, asked for by no check yet. */
export const GOOD_PRACTICE_WALL: readonly Limit[] = [
  ...under(
    { ...BIA_28B, topic: 'height and thickness' },
    atMost('veneer-height', 'Veneer on its foundation, height to the plate', metres(30), 'm', {
      note: '38 ft (11.6 m) at a gable.',
    }),
  ),
  ...under(
    { ...BIA_28B, topic: 'water' },
    atLeast('air-space-wished', 'Air space behind veneer, recommended', inches(2)),
    atLeast('air-space', 'Air space behind veneer', inches(1)),
    atMost('veneer-to-frame', 'Veneer to frame', inches(4.5)),
    atLeast('flashing-upstand', 'Flashing up the backing', inches(8)),
    atLeast('flashing-lap', 'Flashing under the water barrier, lap', inches(4)),
    atLeast('base-flashing-height', 'Base flashing above the ground', inches(6)),
    atLeast('end-dam', 'End dam of flashing, turned up into the head joint', inches(1)),
    atMost('weep-spacing', 'Weep holes that are open head joints, spacing', inches(24)),
    atMost('weep-spacing-wick', 'Weep holes with wicks or tubes, spacing', inches(16)),
  ),
  ...under(
    BIA_18A,
    atMost('movement-plain', 'Movement joints in brickwork without openings, spacing', metres(25), 'm'),
    atMost('movement-openings', 'Movement joints in brickwork with many openings, spacing', metres(20), 'm'),
    atLeast('under-shelf-angle', 'Open space under a shelf angle', inches(1 / 4)),
  ),
  ...under(
    { ...BEALL, topic: 'openings', clause: 'pages 258 to 264' },
    atMost('minor-arch', 'Minor arch, span', metres(6), 'm'),
    atLeast('arch-props', 'Centring under an arch stays for', 7, 'days'),
    atLeast('arch-joint', 'Joint of an arch at its narrow end', inches(1 / 4)),
  ),
  ...under(
    {
      ...PRACTICE,
      topic: 'openings',
      source: 'bia-31b',
      edition: 'BIA Technical Note 31B, May 1987',
      clause: 'first page',
    },
    atMost('loose-angle-span', 'Loose steel angle without side support, usual span', metres(8), 'm'),
  ),
  ...under(
    {
      ...PRACTICE,
      topic: 'openings',
      source: 'concrete-lintels',
      edition: 'Masonry Construction magazine',
      clause: 'rule of thumb',
      howSure: 'second-hand',
    },
    atLeast('concrete-lintel-bearing', 'Concrete masonry lintel, bearing at each end', inches(6), 'mm', {
      note: 'And 1 in for each foot of span.',
    }),
  ),
  ...under(
    { ...NEW_ZEALAND, topic: 'bond', clause: '1.3' },
    atLeast('lap-least', 'Running bond: least lap over the unit below, of its length', 25, '%'),
    atMost('lap-most', 'Running bond: greatest lap over the unit below, of its length', 75, '%'),
  ),
  ...under(
    {
      ...NEW_ZEALAND,
      topic: 'judging the face',
      kind: 'looks',
      source: 'bbfnz',
      edition: 'BBFNZ best practice guide',
      clause: 'preface',
    },
    atLeast('viewing-distance', 'Finished brickwork is looked at from, in soft light', 6.1, 'm'),
  ),
  ...under(
    {
      ...PRACTICE,
      topic: 'movement',
      source: 'bre-cracks',
      edition: 'Bands of BRE Digest 251',
      clause: 'bands 0 to 2',
      howSure: 'second-hand',
      note: 'No width is a pass. That an engineer sees what is wider is common practice. One that grows or steps out goes to an engineer however fine it is.',
    },
    exactly(
      'crack-width',
      'Crack that does not grow and has no step: the bands speak of filling and pointing up to a width of',
      5,
    ),
  ),
  ...under(
    {
      ...PRACTICE,
      topic: 'judging the face',
      kind: 'looks',
      source: 'saskatchewan-2014',
      edition: 'New Home Warranty Program of Saskatchewan, 2014',
      clause: '4.15 to 4.20',
      note: 'What a Canadian new home warranty accepts.',
    },
    atLeast('warranty-distance', 'Finished brickwork is looked at from, in daylight', 6, 'm'),
    atMost('warranty-bed-line', 'Bed joint out of its line', 12),
  ),
  ...under(
    { ...AUSTRALIA, topic: 'support', clause: 'Part 5.7, (4)' },
    atMost('australia-overhang', 'Australia: outer leaf past the edge of the slab', 15),
  ),
  ...under(
    { ...AUSTRALIA, topic: 'water', clause: 'Part 5.7, (1)' },
    atLeast('australia-cavity-least', 'Australia: clear cavity behind veneer: least width', 25),
    atMost('australia-cavity-most', 'Australia: clear cavity behind veneer: greatest width', 75),
  ),
  ...under(
    { ...AUSTRALIA, topic: 'ties', clause: 'Part 5.6' },
    atLeast('australia-embedment', 'Australia: tie, length in each leaf', 50),
    atMost('australia-joint-ties', 'Australia: ties beside a movement joint, distance from it', 300),
  ),
  ...under(
    {
      ...PRACTICE,
      topic: 'joints',
      source: 'masonry-spec-1979',
      edition: 'Masonry Magazine, guide specification of 1979',
      clause: 'pointing',
      howSure: 'second-hand',
    },
    atLeast('repointing-depth', 'Old joint raked out before pointing, depth', inches(1 / 2)),
    exactly('sealant-recess-depth', 'Recess left for sealant, depth', inches(3 / 4)),
  ),
];
