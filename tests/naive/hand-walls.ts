import type { HandWall } from './build';
import { BACK_WALLS } from './hand-walls/back';
import { BED_WALLS } from './hand-walls/beds';
import { FACE_WALLS } from './hand-walls/face';
import { HEAD_WALLS } from './hand-walls/heads';
import { LINE_WALLS } from './hand-walls/line';
import { LINTEL_WALLS } from './hand-walls/lintels';
import { MORTAR_WALLS } from './hand-walls/mortar';
import { PLANE_WALLS } from './hand-walls/plane';
import { RAKE_WALLS } from './hand-walls/rake';
import { SUPPORT_WALLS } from './hand-walls/support';
import { TALL_WALLS } from './hand-walls/tall';
import { TIE_SPACING_WALLS } from './hand-walls/tie-spacing';
import { TIE_WALLS } from './hand-walls/ties';
import { WATER_WALLS } from './hand-walls/water';

/** Walls worked on paper. `expected` is all that is wrong, typed by hand from the definitions, and computed by nothing. */
export const HAND_WALLS: readonly HandWall[] = [
  ...BACK_WALLS,
  ...BED_WALLS,
  ...HEAD_WALLS,
  ...LINE_WALLS,
  ...PLANE_WALLS,
  ...FACE_WALLS,
  ...SUPPORT_WALLS,
  ...LINTEL_WALLS,
  ...TIE_SPACING_WALLS,
  ...TIE_WALLS,
  ...MORTAR_WALLS,
  ...TALL_WALLS,
  ...RAKE_WALLS,
  ...WATER_WALLS,
];
