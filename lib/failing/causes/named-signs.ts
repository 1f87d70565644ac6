import { SEEN } from '../state/crack-steps';
import type { Signs } from './signs';

/** Something that can be measured on a wall, in plain words. */
export interface Sign {
  readonly sign: string;
  readonly isThere: (signs: Signs) => boolean;
}

/** A level line is read to this, mm; a face is called out of plane from there on: common practice, as is the next. */
const LEVEL_READS = 1;
const PLANE_READS = 3;

const sign = (words: string, isThere: Sign['isThere']): Sign => ({ sign: words, isThere });

const isDown = (end: number, other: number) => end < other - LEVEL_READS;
const leftDown = ({ ends }: Signs) => isDown(ends.left, ends.middle);
const rightDown = ({ ends }: Signs) => isDown(ends.right, ends.middle);
const widerAtHead = ({ tear }: Signs) => tear !== null && tear.atHead > 1.5 * tear.atFoot + SEEN;
const widerAtFoot = ({ tear }: Signs) => tear !== null && tear.atFoot > 1.5 * tear.atHead + SEEN;

export const TEAR_WIDE_AT_HEAD = sign('a crack from course to course, wider at its head', widerAtHead);
export const TEAR_WIDE_AT_FOOT = sign('a crack from course to course, wider at its foot', widerAtFoot);
export const TEAR_EVEN = sign(
  'a crack from course to course, as wide at its foot as at its head',
  (signs) => signs.tear !== null && !widerAtHead(signs) && !widerAtFoot(signs),
);
export const ONE_END_DOWN = sign(
  'one end lower than the middle, by the level',
  (signs) => leftDown(signs) !== rightDown(signs),
);
export const BOTH_ENDS_DOWN = sign(
  'both ends lower than the middle, by the level',
  (signs) => leftDown(signs) && rightDown(signs),
);
export const MIDDLE_DOWN = sign(
  'the middle lower than both ends, by the level',
  ({ ends }) => isDown(ends.middle, ends.left) && isDown(ends.middle, ends.right),
);
export const LEVEL_HOLDS = sign(
  'courses level from end to end',
  ({ ends }) =>
    Math.max(ends.left, ends.middle, ends.right) - Math.min(ends.left, ends.middle, ends.right) <=
    LEVEL_READS,
);
export const CLAY = sign('units of clay', ({ state }) => state.stuff === 'clay');
export const CONCRETE = sign('units of concrete', ({ state }) => state.stuff === 'concrete');
export const DRY_SEASON = sign(
  'seen in the dry half of the year',
  ({ state }) => state.season === 'summer' || state.season === 'autumn',
);
export const COLD_SEASON = sign(
  'seen in winter or spring',
  ({ state }) => state.season === 'winter' || state.season === 'spring',
);
export const THROUGH_UNITS = sign('the crack goes through units', ({ cracks }) =>
  cracks.some(({ through }) => through.length > 0),
);
export const OUT_AT_CORNER = sign(
  'a crack beside a corner, its outer side pushed out',
  ({ stepAtCorner }) => stepAtCorner > SEEN * 3,
);
export const LINTEL_LOW_IN_MIDDLE = sign(
  'a lintel lower in its middle than at its ends',
  ({ lintel }) => lintel !== null && lintel.middle < Math.min(lintel.left, lintel.right) - LEVEL_READS,
);
export const LINTEL_END_DOWN = sign(
  'one end of a lintel lower than the other',
  ({ lintel }) => lintel !== null && Math.abs(lintel.left - lintel.right) > LEVEL_READS,
);
export const LINTEL_UP = sign(
  'a lintel higher than it was laid, at both ends',
  ({ lintel }) => lintel !== null && Math.min(lintel.left, lintel.right) > SEEN,
);
export const CRACKS_OVER_OPENING = sign(
  'cracks that step up from the head of an opening',
  ({ lintel }) => (lintel?.cracksOver ?? 0) > 0,
);
export const OPEN_OVER_BEARING = sign(
  'a level crack over the bearings of a lintel',
  ({ openOverBearing }) => openOverBearing >= SEEN,
);
export const RUST_AT_LINTEL = sign('rust at a lintel', ({ rustAtLintel }) => rustAtLintel);
export const RUST_AT_TIES = sign('rust where ties lie', ({ rustAtTies }) => rustAtTies);
export const OPEN_AT_TIES_ALONE = sign(
  'beds open at courses of ties and at no others',
  ({ openBeds, openAtTies }) => openBeds >= 2 && openAtTies === openBeds,
);
export const OPEN_EVERYWHERE = sign(
  'most beds open, whatever lies in them',
  ({ openBeds, beds }) => openBeds > 0.6 * beds,
);
export const BELLY = sign(
  'a belly: the face stands out between a true foot and a true head',
  ({ belly, lean }) => belly > PLANE_READS && belly > Math.abs(lean),
);
export const OPEN_AT_BELLY = sign('a level crack across the belly', ({ openAtBelly }) => openAtBelly >= SEEN);
export const LEAN = sign(
  'the face leans out from foot to head',
  ({ belly, lean }) => lean > PLANE_READS && lean > 3 * belly,
);
export const BOW = sign('the head of the wall bows out between its ends', ({ bow }) => bow > PLANE_READS);
export const BOTH_HELD = sign(
  'both ends butt against something that does not give',
  ({ state }) => state.held.length >= 2,
);
export const FLAKES = sign('faces that have flaked', ({ flaked }) => flaked.length > 0);
export const FLAKES_WET = sign('flakes where the wall is wet', ({ flakedInWet }) => flakedInWet > 0.9);
export const FLAKES_IN_BLOOM = sign('flakes among white bloom', ({ flakedInBloom }) => flakedInBloom > 0.9);
export const FLAKES_BESIDE_PATCH = sign(
  'flakes between patched joints and nowhere else',
  ({ flakedInPatch }) => flakedInPatch > 0.9,
);
export const FLAKES_AT_TOP = sign(
  'flakes in the top three courses alone',
  ({ flakedFromTop }) => flakedFromTop > 0 && flakedFromTop <= 3,
);
export const LIME = sign(
  'lime washed out below the joints of the top course',
  ({ limeStreaks }) => limeStreaks > 0,
);
export const SOFT = sign('mortar gone soft in its joints', ({ softJoints }) => softJoints > 0);
export const WHITE = sign(
  'mortar white and split in the middle of its beds',
  ({ whiteMortar }) => whiteMortar > 0,
);
export const HOLLOW = sign('units hollow behind, or fallen', ({ hollow, fallen }) => hollow + fallen > 0);
export const CRUSHED = sign('a crushed spot', ({ crushed }) => crushed > 0);
export const DRIVEN_IN = sign('units driven in', ({ drivenIn }) => drivenIn > PLANE_READS);
export const SCUFF = sign('a scuff at the same height', ({ scuffed }) => scuffed);
