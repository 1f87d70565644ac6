import type { CheckId } from '../inspect/finding';
import type { RuleSetId } from '../limits/limit';
import { limitOf } from '../limits/limits';
import { WALL_KINDS, type WallKind } from '../wall/model';
import type { SpoilWall } from './bench';
import { spoilBulgeOrHollow } from './faults/bulge-or-hollow';
import { spoilCornerNotSquare } from './faults/corner-not-square';
import { spoilCourseOffLevel } from './faults/course-off-level';
import { spoilGaugeDrift } from './faults/gauge-drift';
import { spoilLeanMortar } from './faults/lean-mortar';
import { spoilMissingBackMortar } from './faults/missing-back-mortar';
import { spoilNoBearingReturn } from './faults/no-bearing-return';
import { spoilNoLintel } from './faults/no-lintel';
import { spoilNoTieAtEdge } from './faults/no-tie-at-edge';
import { spoilOpenHead } from './faults/open-head';
import { spoilOutOfPlumb } from './faults/out-of-plumb';
import { spoilOverhangTooFar } from './faults/overhang-too-far';
import { spoilPerpendDrift } from './faults/perpend-drift';
import { spoilProudUnit } from './faults/proud-unit';
import { spoilRakedThinVeneer } from './faults/raked-thin-veneer';
import { spoilRingButteredBack } from './faults/ring-buttered-back';
import { spoilShallowTie } from './faults/shallow-tie';
import { spoilShortLintelBearing } from './faults/short-lintel-bearing';
import { spoilSliverPiece } from './faults/sliver-piece';
import { spoilStaleMortar } from './faults/stale-mortar';
import { spoilTaperingBed } from './faults/tapering-bed';
import { spoilThickJoint } from './faults/thick-joint';
import { spoilThinJoint } from './faults/thin-joint';
import { spoilThinTie } from './faults/thin-tie';
import { spoilTiesTooFarApart } from './faults/ties-too-far-apart';
import { spoilTwistedUnit } from './faults/twisted-unit';
import { spoilWeakAngle } from './faults/weak-angle';

/** A way to spoil a wall, and the walls it fits. */
export interface FaultWay {
  readonly spoil: SpoilWall;
  readonly kinds: readonly WallKind[];
  readonly masonry: readonly ('anchored' | 'adhered')[];
  /** Severities over this would break another limit as well. */
  readonly most: number;
}

const NO_OPENING: readonly WallKind[] = ['plain-panel', 'gable-end'];
const WITH_OPENING: readonly WallKind[] = ['window-panel', 'door-corner'];
const ANCHORED = ['anchored'] as const;
const ADHERED = ['adhered'] as const;
const EITHER = ['anchored', 'adhered'] as const;

export const FAULTS: Readonly<Record<CheckId, FaultWay>> = {
  'missing-back-mortar': { spoil: spoilMissingBackMortar, kinds: WALL_KINDS, masonry: ADHERED, most: 4 },
  'ring-buttered-back': { spoil: spoilRingButteredBack, kinds: WALL_KINDS, masonry: ADHERED, most: 4 },
  'tapering-bed': { spoil: spoilTaperingBed, kinds: WALL_KINDS, masonry: EITHER, most: 3.2 },
  'thick-joint': { spoil: spoilThickJoint, kinds: WALL_KINDS, masonry: EITHER, most: 4 },
  'thin-joint': { spoil: spoilThinJoint, kinds: WALL_KINDS, masonry: EITHER, most: 4 },
  'open-head': { spoil: spoilOpenHead, kinds: WALL_KINDS, masonry: ANCHORED, most: 4 },
  'raked-thin-veneer': { spoil: spoilRakedThinVeneer, kinds: WALL_KINDS, masonry: ANCHORED, most: 4 },
  'course-off-level': { spoil: spoilCourseOffLevel, kinds: NO_OPENING, masonry: EITHER, most: 2.3 },
  'gauge-drift': { spoil: spoilGaugeDrift, kinds: NO_OPENING, masonry: EITHER, most: 2 },
  'perpend-drift': { spoil: spoilPerpendDrift, kinds: ['plain-panel'], masonry: EITHER, most: 2.3 },
  'bulge-or-hollow': { spoil: spoilBulgeOrHollow, kinds: NO_OPENING, masonry: EITHER, most: 1.9 },
  'out-of-plumb': { spoil: spoilOutOfPlumb, kinds: WALL_KINDS, masonry: EITHER, most: 2.6 },
  'twisted-unit': { spoil: spoilTwistedUnit, kinds: WALL_KINDS, masonry: EITHER, most: 4 },
  'proud-unit': { spoil: spoilProudUnit, kinds: WALL_KINDS, masonry: EITHER, most: 4 },
  'corner-not-square': { spoil: spoilCornerNotSquare, kinds: ['door-corner'], masonry: EITHER, most: 4 },
  'sliver-piece': { spoil: spoilSliverPiece, kinds: WALL_KINDS, masonry: EITHER, most: 4 },
  'overhang-too-far': { spoil: spoilOverhangTooFar, kinds: WALL_KINDS, masonry: ANCHORED, most: 4 },
  'no-bearing-return': { spoil: spoilNoBearingReturn, kinds: WALL_KINDS, masonry: ANCHORED, most: 4 },
  'short-lintel-bearing': { spoil: spoilShortLintelBearing, kinds: WITH_OPENING, masonry: ANCHORED, most: 4 },
  'no-lintel': { spoil: spoilNoLintel, kinds: WITH_OPENING, masonry: ANCHORED, most: 4 },
  'weak-angle': { spoil: spoilWeakAngle, kinds: WITH_OPENING, masonry: ANCHORED, most: 3 },
  'ties-too-far-apart': { spoil: spoilTiesTooFarApart, kinds: WALL_KINDS, masonry: ANCHORED, most: 4 },
  'no-tie-at-edge': { spoil: spoilNoTieAtEdge, kinds: WALL_KINDS, masonry: ANCHORED, most: 4 },
  'shallow-tie': { spoil: spoilShallowTie, kinds: WALL_KINDS, masonry: ANCHORED, most: 4 },
  'thin-tie': { spoil: spoilThinTie, kinds: WALL_KINDS, masonry: ANCHORED, most: 4 },
  'stale-mortar': { spoil: spoilStaleMortar, kinds: WALL_KINDS, masonry: EITHER, most: 4 },
  'lean-mortar': { spoil: spoilLeanMortar, kinds: WALL_KINDS, masonry: EITHER, most: 4 },
};

/** Whether a fault can be shown on a wall of this kind and masonry under these rules. */
export function faultFits(
  fault: CheckId,
  kind: WallKind,
  masonry: 'anchored' | 'adhered',
  rules: RuleSetId,
): boolean {
  const way = FAULTS[fault];
  if (!way.kinds.includes(kind) || !way.masonry.includes(masonry)) return false;
  return fault !== 'raked-thin-veneer' || limitOf(rules, 'rake-on-thin-veneer') !== undefined;
}
