import type { CheckId } from '../inspect/finding';
import type { RuleSetId } from '../limits/limit';
import { limitOf } from '../limits/limits';
import { WALL_KINDS, type WallKind } from '../wall/model';
import type { Fault, Need } from './fault';
import { missingBackMortar } from './faults/backs/missing-back-mortar';
import { ringButteredBack } from './faults/backs/ring-buttered-back';
import { sliverPiece } from './faults/bond/sliver-piece';
import { thickJoint, thinJoint } from './faults/joints/joint-thickness';
import { openHead } from './faults/joints/open-head';
import { rakedThinVeneer } from './faults/joints/raked-thin-veneer';
import { taperingBed } from './faults/joints/tapering-bed';
import { bulgeOrHollow } from './faults/line/bulge-or-hollow';
import { cornerNotSquare } from './faults/line/corner-not-square';
import { courseOffLevel } from './faults/line/course-off-level';
import { gaugeDrift } from './faults/line/gauge-drift';
import { outOfPlumb } from './faults/line/out-of-plumb';
import { perpendDrift } from './faults/line/perpend-drift';
import { proudUnit } from './faults/line/proud-unit';
import { twistedUnit } from './faults/line/twisted-unit';
import { leanMortar } from './faults/mortar/lean-mortar';
import { staleMortar } from './faults/mortar/stale-mortar';
import { noBearingReturn } from './faults/support/no-bearing-return';
import { noLintel } from './faults/support/no-lintel';
import { overhangTooFar } from './faults/support/overhang-too-far';
import { shortLintelBearing } from './faults/support/short-lintel-bearing';
import { weakAngle } from './faults/support/weak-angle';
import { noTieAtEdge } from './faults/ties/no-tie-at-edge';
import { shallowTie } from './faults/ties/shallow-tie';
import { thinTie } from './faults/ties/thin-tie';
import { tieNearFace } from './faults/ties/tie-near-face';
import { tiesTooFarApart } from './faults/ties/ties-too-far-apart';
import { blockedWeep } from './faults/water/blocked-weep';
import { lowFlashing } from './faults/water/low-flashing';
import { noEndDam } from './faults/water/no-end-dam';
import { noFlashing } from './faults/water/no-flashing';
import { shortFlashing } from './faults/water/short-flashing';
import { weepsTooFarApart } from './faults/water/weeps-too-far-apart';

/** A name without its fault does not compile. */
export const FAULTS: Readonly<Record<CheckId, Fault>> = {
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

/** Whether a fault can be shown on a wall of this kind and masonry under these rules. */
export function faultFits(
  fault: CheckId,
  kind: WallKind,
  masonry: 'anchored' | 'adhered',
  rules: RuleSetId,
): boolean {
  const { kinds = WALL_KINDS, masonry: only = masonry, limit, never } = FAULTS[fault];
  return (
    kinds.includes(kind) &&
    only === masonry &&
    !(never?.kind === kind && never.rules === rules) &&
    (limit === undefined || limitOf(rules, limit) !== undefined)
  );
}

/** Whether a fault can stand only on a wall that was laid so. */
export function hasNeed(fault: CheckId, need: Need): boolean {
  return FAULTS[fault].needs?.includes(need) ?? false;
}
