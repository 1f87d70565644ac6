import { bulgeOrHollow } from './checks/bulge-or-hollow';
import { cornerNotSquare } from './checks/corner-not-square';
import { courseOffLevel } from './checks/course-off-level';
import { gaugeDrift } from './checks/gauge-drift';
import { leanMortar } from './checks/lean-mortar';
import { missingBackMortar } from './checks/missing-back-mortar';
import { noBearingReturn } from './checks/no-bearing-return';
import { noLintel } from './checks/no-lintel';
import { noTieAtEdge } from './checks/no-tie-at-edge';
import { openHead } from './checks/open-head';
import { outOfPlumb } from './checks/out-of-plumb';
import { overhangTooFar } from './checks/overhang-too-far';
import { perpendDrift } from './checks/perpend-drift';
import { proudUnit } from './checks/proud-unit';
import { rakedThinVeneer } from './checks/raked-thin-veneer';
import { ringButteredBack } from './checks/ring-buttered-back';
import { shallowTie } from './checks/shallow-tie';
import { shortLintelBearing } from './checks/short-lintel-bearing';
import { sliverPiece } from './checks/sliver-piece';
import { staleMortar } from './checks/stale-mortar';
import { taperingBed } from './checks/tapering-bed';
import { thickJoint } from './checks/thick-joint';
import { thinJoint } from './checks/thin-joint';
import { thinTie } from './checks/thin-tie';
import { tiesTooFarApart } from './checks/ties-too-far-apart';
import { twistedUnit } from './checks/twisted-unit';
import { weakAngle } from './checks/weak-angle';
import type { Check } from './sight';

/** Every check, in the order of their names in `finding.ts`. */
export const CHECK_LIST: readonly Check[] = [
  missingBackMortar,
  ringButteredBack,
  taperingBed,
  thickJoint,
  thinJoint,
  openHead,
  rakedThinVeneer,
  courseOffLevel,
  gaugeDrift,
  perpendDrift,
  bulgeOrHollow,
  outOfPlumb,
  twistedUnit,
  proudUnit,
  cornerNotSquare,
  sliverPiece,
  overhangTooFar,
  noBearingReturn,
  shortLintelBearing,
  noLintel,
  weakAngle,
  tiesTooFarApart,
  noTieAtEdge,
  shallowTie,
  thinTie,
  staleMortar,
  leanMortar,
];
