import { BLOW } from './faces/blow';
import { PEELING_BACK } from './faces/peeling';
import { FROST, HARD_REPOINTING, SALTS, WATER_AT_CAP, WEAK_MORTAR } from './faces/weather';
import { CORNER_SETTLEMENT, HOGGING, SAGGING, TREE_DRYING } from './ground/settlement';
import { BOWING } from './growth/bowing';
import { CLAY_EXPANSION } from './growth/expansion';
import { DRYING_SHRINKAGE } from './growth/shrinkage';
import { SULPHATES } from './growth/sulphates';
import type { Mechanism } from './mechanism';
import { LINTEL_SAGS, LINTEL_SHORT, RUSTING_LINTEL } from './openings/lintels';
import { LEANING_OUT, MISSING_TIES, RUSTING_TIES } from './ties/ties';

/** All that can work on a wall. A new one goes to the end: its place settles its chance. */
export const MECHANISMS: readonly Mechanism[] = [
  CORNER_SETTLEMENT,
  TREE_DRYING,
  SAGGING,
  HOGGING,
  CLAY_EXPANSION,
  DRYING_SHRINKAGE,
  SULPHATES,
  LINTEL_SAGS,
  LINTEL_SHORT,
  RUSTING_LINTEL,
  RUSTING_TIES,
  MISSING_TIES,
  LEANING_OUT,
  FROST,
  SALTS,
  WATER_AT_CAP,
  WEAK_MORTAR,
  HARD_REPOINTING,
  PEELING_BACK,
  BLOW,
  BOWING,
];
