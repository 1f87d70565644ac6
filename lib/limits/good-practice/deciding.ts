import { inches } from '../../units';
import type { Limit } from '../limit';
import { atLeast, atMost, exactly, PRESENT, shareOfDepth, under } from '../rows';
import { OURS, PRACTICE } from './practice';

const THREE_ABOUT_TEN =
  'Given for veneer in Canada (CSA A371) and in New Zealand (NZS 4210), each by a trade body: 10 mm, and 3 mm either way.';

const JOINTS: readonly Limit[] = [
  ...under(
    {
      ...PRACTICE,
      topic: 'joints',
      source: 'csa-a371',
      edition: 'CSA A371-14; NZS 4210:2001',
      clause: 'joint thickness',
      howSure: 'second-hand',
      note: THREE_ABOUT_TEN,
    },
    atMost('bed-joint-most', 'Bed joint: greatest thickness', 13),
    atLeast('bed-joint-least', 'Bed joint: least thickness', 7),
    atMost('head-joint-most', 'Head joint: greatest width', 13),
    atLeast('head-joint-least', 'Head joint: least width', 7),
  ),
  ...under(
    { ...PRACTICE, topic: 'joints', source: 'irc-2021', edition: 'IRC 2021', clause: 'R606.3.1' },
    atLeast('first-bed-least', 'First bed joint, on the foundation: least thickness', inches(1 / 4), 'mm', {
      note: 'Borrowed from the IRC.',
    }),
  ),
  ...under(
    {
      ...PRACTICE,
      topic: 'joints',
      source: 'nzs-4210',
      edition: 'NZS 4210:2001',
      clause: 'first bed',
      howSure: 'second-hand',
    },
    atMost('first-bed-most', 'First bed joint, on the foundation: greatest thickness', 20, 'mm', {
      note: 'Borrowed from New Zealand, where it may take up what the slab is out.',
    }),
  ),
  ...under(
    { ...OURS, topic: 'joints' },
    atMost('bed-taper', 'Bed under one unit, one end thicker than the other by', 4),
  ),
  ...under(
    {
      ...PRACTICE,
      topic: 'joints',
      source: 'beall-2004',
      edition: 'Beall, Masonry and Concrete',
      clause: 'page 157',
      howSure: 'second-hand',
    },
    atLeast('head-fill', 'Head joint of solid units, share of its area that is filled', 95, '%', {
      note: 'Ends of units fully buttered. 95 % is our reading of full: as near as a probe can tell.',
    }),
  ),
];

const BACKS: readonly Limit[] = [
  ...under(
    {
      ...PRACTICE,
      topic: 'back mortar',
      source: 'ansi-a108-5',
      edition: 'ANSI A108.5',
      clause: '2.2.3',
      howSure: 'second-hand',
      note: 'A rule for ceramic tile out of doors and in wet rooms, used for thin brick only because it is alike.',
    },
    atLeast('back-contact', 'Back of an adhered unit, in contact with mortar', 95, '%'),
  ),
  ...under(
    {
      ...PRACTICE,
      topic: 'back mortar',
      source: 'ansi-a108-articles',
      edition: 'Articles on ANSI A108.5',
      clause: 'best practice',
      howSure: 'second-hand',
      note: 'Advice of one author for tile, not part of the standard: no bare place over 2 square inches.',
    },
    atMost('back-void', 'Largest bare place on the back of an adhered unit', 1290, 'mm²'),
  ),
];

const BOND: readonly Limit[] = [
  ...under(
    {
      ...PRACTICE,
      topic: 'bond',
      source: 'round-openings',
      edition: 'Masonry Construction magazine',
      clause: 'cut pieces',
      howSure: 'second-hand',
    },
    atLeast('smallest-piece', 'Shortest piece in a wall, against its depth', shareOfDepth(1), 'mm', {
      note: 'A piece shorter than the unit is wide holds badly. New Zealand asks for the larger of that and a quarter of the length. Closers set out at ends and reveals are not meant.',
    }),
  ),
];

const SUPPORT: readonly Limit[] = [
  ...under(
    { ...PRACTICE, topic: 'support', source: 'nbc-2020', edition: 'NBC 2020', clause: '9.20.8.5' },
    atMost(
      'overhang-share',
      'Face of the veneer past the edge of its support, by its thickness',
      shareOfDepth(1 / 3),
      'mm',
      {
        note: 'Borrowed from Canada; in the United States two thirds must bear, which comes to the same.',
      },
    ),
  ),
  ...under(
    { ...PRACTICE, topic: 'support', source: 'nbc-2020', edition: 'NBC 2020', clause: '9.20.5.1.(1)' },
    atLeast(
      'supported-share',
      'Length of the first course that stands on masonry, concrete or steel',
      100,
      '%',
      {
        note: 'Borrowed from Canada.',
      },
    ),
  ),
];

const OPENINGS: readonly Limit[] = [
  ...under(
    {
      ...PRACTICE,
      topic: 'openings',
      source: 'irc-2021',
      edition: 'IRC 2021',
      clause: 'R703.8.3',
      note: 'Borrowed from the IRC.',
    },
    exactly('lintel-present', 'Lintel over an opening in the veneer', PRESENT, 'there or not'),
    atLeast('lintel-bearing', 'Lintel, bearing at each end', inches(4)),
  ),
  ...under(
    {
      ...PRACTICE,
      topic: 'openings',
      source: 'beall-2004',
      edition: 'Beall, Masonry and Concrete',
      clause: 'page 258',
      howSure: 'second-hand',
    },
    atLeast('angle-thickness', 'Steel angle over an opening, thickness', inches(1 / 4)),
    atLeast('angle-leg', 'Steel angle under a 4 in wythe, leg it stands on', inches(3), 'mm', {
      note: 'Others ask for 3 1/2 in.',
    }),
  ),
];

/** Joints, backs, bond, support and openings: what the checks ask for. */
export const GOOD_PRACTICE_DECIDING: readonly Limit[] = [
  ...JOINTS,
  ...BACKS,
  ...BOND,
  ...SUPPORT,
  ...OPENINGS,
];
