import type { Check } from './check';
import { missingBackMortar } from './checks/backs/missing-back-mortar';
import { ringButteredBack } from './checks/backs/ring-buttered-back';
import { sliverPiece } from './checks/bond/sliver-piece';
import { openHead } from './checks/joints/open-head';
import { rakedThinVeneer } from './checks/joints/raked-thin-veneer';
import { taperingBed } from './checks/joints/tapering-bed';
import { thickJoint } from './checks/joints/thick-joint';
import { thinJoint } from './checks/joints/thin-joint';
import { bulgeOrHollow } from './checks/line/bulge-or-hollow';
import { cornerNotSquare } from './checks/line/corner-not-square';
import { courseOffLevel } from './checks/line/course-off-level';
import { gaugeDrift } from './checks/line/gauge-drift';
import { outOfPlumb } from './checks/line/out-of-plumb';
import { perpendDrift } from './checks/line/perpend-drift';
import { proudUnit } from './checks/line/proud-unit';
import { twistedUnit } from './checks/line/twisted-unit';
import { leanMortar } from './checks/mortar/lean-mortar';
import { staleMortar } from './checks/mortar/stale-mortar';
import { noBearingReturn } from './checks/support/no-bearing-return';
import { noLintel } from './checks/support/no-lintel';
import { overhangTooFar } from './checks/support/overhang-too-far';
import { shortLintelBearing } from './checks/support/short-lintel-bearing';
import { weakAngle } from './checks/support/weak-angle';
import { noTieAtEdge } from './checks/ties/no-tie-at-edge';
import { shallowTie } from './checks/ties/shallow-tie';
import { thinTie } from './checks/ties/thin-tie';
import { tieNearFace } from './checks/ties/tie-near-face';
import { tiesTooFarApart } from './checks/ties/ties-too-far-apart';
import { blockedWeep } from './checks/water/blocked-weep';
import { lowFlashing } from './checks/water/low-flashing';
import { noEndDam } from './checks/water/no-end-dam';
import { noFlashing } from './checks/water/no-flashing';
import { shortFlashing } from './checks/water/short-flashing';
import { weepsTooFarApart } from './checks/water/weeps-too-far-apart';
import { CHECKS, type CheckId } from './finding';

/** The fault catalogue. A name without its check does not compile. */
export const CATALOGUE: Readonly<Record<CheckId, Check>> = {
  'missing-back-mortar': missingBackMortar,
  'ring-buttered-back': ringButteredBack,
  'tapering-bed': taperingBed,
  'thick-joint': thickJoint,
  'thin-joint': thinJoint,
  'open-head': openHead,
  'raked-thin-veneer': rakedThinVeneer,
  'course-off-level': courseOffLevel,
  'gauge-drift': gaugeDrift,
  'perpend-drift': perpendDrift,
  'bulge-or-hollow': bulgeOrHollow,
  'out-of-plumb': outOfPlumb,
  'twisted-unit': twistedUnit,
  'proud-unit': proudUnit,
  'corner-not-square': cornerNotSquare,
  'sliver-piece': sliverPiece,
  'overhang-too-far': overhangTooFar,
  'no-bearing-return': noBearingReturn,
  'short-lintel-bearing': shortLintelBearing,
  'no-lintel': noLintel,
  'weak-angle': weakAngle,
  'ties-too-far-apart': tiesTooFarApart,
  'no-tie-at-edge': noTieAtEdge,
  'shallow-tie': shallowTie,
  'tie-near-face': tieNearFace,
  'thin-tie': thinTie,
  'weeps-too-far-apart': weepsTooFarApart,
  'blocked-weep': blockedWeep,
  'no-flashing': noFlashing,
  'low-flashing': lowFlashing,
  'short-flashing': shortFlashing,
  'no-end-dam': noEndDam,
  'stale-mortar': staleMortar,
  'lean-mortar': leanMortar,
};

/** Every check, in the order of their names. */
export const CHECK_LIST: readonly Check[] = CHECKS.map((id) => CATALOGUE[id]);
