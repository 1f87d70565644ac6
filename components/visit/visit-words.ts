import type { Margin } from '../../lib/failing/margins/margins';
import type { StreetAct, TodayAct } from '../../lib/visit/acts';
import type { FurtherReading } from '../../lib/visit/further-readings';
import type { Condition } from '../../lib/visit/shown';

export const CONDITION_WORDS: Readonly<Record<Condition, string>> = {
  missing: 'Missing',
  loose: 'Loose: may come down',
  cracked: 'Cracked, or cracked beside it',
  moved: 'Moved',
  flaked: 'Face flaked or crushed',
  'mortar gone': 'Mortar gone or spoiled',
};

export const ACT_WORDS: Readonly<Record<StreetAct | TodayAct, string>> = {
  'keep-away': 'Close the ground on both sides, farther out than the wall is tall, and keep everyone out',
  warn: 'Tell the people who use the place, and the owner',
  look: 'Look over the whole wall from outside that ground, and take pictures',
  'go-near': 'Walk up to the wall, where nothing hangs above you',
  shake: 'Push at the units to feel which are loose',
  pull: 'Pull off what hangs loose',
  prop: 'Wedge the gaps so that nothing moves',
  closed: 'Leave the ground closed until somebody licensed has opened it',
  owner: 'Tell the owner, today and in writing',
  engineer: 'Call a licensed engineer',
  authority: 'Call the authority at once: masonry may fall',
  file: 'File the pictures and measures with the date',
  fill: 'Fill the cracks before more water gets in',
  'fix-back': 'Bed the loose units back in yourself',
  leave: 'Leave it until the next yearly round',
};

export const READING_WORDS: Readonly<Record<FurtherReading, string>> = {
  'gauge-for-a-year': 'a crack gauge, read through twelve months',
  'under-the-cap': 'the joints and drip of the cap, and how far down the wet goes',
  'behind-a-unit': 'the space behind a unit, opened by somebody who may',
  'rust-at-a-tie': 'the steel, by a probe for rust at a tie or bearing',
  'level-of-a-course': 'the level of one course from end to end',
  'mortar-to-a-laboratory': 'a sample of mortar, in a laboratory',
};

/** Causes in the words of the trade. */
export const CAUSE_WORDS: Readonly<Record<string, string>> = {
  'corner-settlement': 'The ground has gone down under one end',
  'tree-drying': 'A tree dries the ground under one end',
  sagging: 'The ground has gone down under the middle',
  hogging: 'The ground has gone down under both ends',
  'clay-expansion': 'The clay has grown, and no joint lets it',
  'drying-shrinkage': 'The concrete has shrunk in drying',
  sulphates: 'Sulphates make the mortar grow',
  'lintel-sags': 'The lintel is too weak',
  'lintel-short': 'The lintel bears too short at one end',
  'rusting-lintel': 'The lintel rusts and lifts what it carries',
  'rusting-ties': 'The ties rust and open their beds',
  'missing-ties': 'Ties are missing, or have pulled out',
  'leaning-out': 'The wall leans out from its foot',
  frost: 'Frost in wet masonry',
  salts: 'Salts grow behind the faces',
  'water-at-cap': 'Water comes in at the cap',
  'weak-mortar': 'The mortar was weak from the start',
  'hard-repointing': 'Hard new pointing over softer units',
  'peeling-back': 'The units peel off their backing',
  blow: 'Something has hit the wall',
  bowing: 'The wall has grown between two ends that hold it, and bows out',
};

export function causeName(cause: string): string {
  return CAUSE_WORDS[cause] ?? cause;
}

/** How a unit would go, as the end of a sentence about it. */
export const MODE_WORDS: Readonly<Record<Margin['mode'], string>> = {
  'hangs in its joints': 'hangs in its joints',
  'tips off its bed': 'tips off its bed',
  'drawn out by suction': 'is drawn out by the wind',
  'shears down its back': 'shears down its back',
  'peels off its back': 'peels off its back',
  'drawn off by suction': 'is drawn off by the wind',
};
