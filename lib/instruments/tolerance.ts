import type { CheckId } from '../inspect/finding';
import type { Mm } from '../units';
import type { InstrumentId } from './instrument';

export interface Tolerance {
  /** The instrument to read it with. */
  readonly instrument: InstrumentId;
  /** How near a reading has to come to what was measured, either way, ends included, in the unit of the finding. */
  readonly within: number;
}

/** Half a sixteenth of an inch, rounded up: what is lost when a reading is written down in inches. */
const SIXTEENTH: Mm = 0.8;
const TAPE: Mm = 1 + SIXTEENTH;
const JOINT: Mm = 0.2 + SIXTEENTH;
const TOLERANCE: Readonly<Record<CheckId, Tolerance>> = {
  'missing-back-mortar': { instrument: 'tape', within: 2 },
  'ring-buttered-back': { instrument: 'tape', within: 2 },
  // Two joints read, two errors.
  'tapering-bed': { instrument: 'joint-gauge', within: 0.2 + JOINT },
  'thick-joint': { instrument: 'joint-gauge', within: JOINT },
  'thin-joint': { instrument: 'joint-gauge', within: JOINT },
  'open-head': { instrument: 'probe', within: 5 },
  'raked-thin-veneer': { instrument: 'probe', within: TAPE },
  'course-off-level': { instrument: 'mason-line', within: TAPE },
  'gauge-drift': { instrument: 'gauge-rod', within: 0.5 + SIXTEENTH },
  'perpend-drift': { instrument: 'plumb-line', within: TAPE },
  'bulge-or-hollow': { instrument: 'mason-line', within: TAPE },
  'out-of-plumb': { instrument: 'plumb-line', within: TAPE },
  'twisted-unit': { instrument: 'straightedge', within: JOINT },
  'proud-unit': { instrument: 'straightedge', within: JOINT },
  'corner-not-square': { instrument: 'square', within: 2.5 },
  'sliver-piece': { instrument: 'tape', within: TAPE },
  'overhang-too-far': { instrument: 'tape', within: TAPE },
  'no-bearing-return': { instrument: 'tape', within: 2 },
  'short-lintel-bearing': { instrument: 'tape', within: TAPE },
  'no-lintel': { instrument: 'mirror', within: 0 },
  'weak-angle': { instrument: 'tape', within: TAPE },
  'ties-too-far-apart': { instrument: 'tape', within: 5 },
  'no-tie-at-edge': { instrument: 'tape', within: 5 },
  'shallow-tie': { instrument: 'tape', within: TAPE },
  'tie-near-face': { instrument: 'tape', within: TAPE },
  'thin-tie': { instrument: 'straightedge', within: 0.1 },
  'weeps-too-far-apart': { instrument: 'tape', within: TAPE },
  'blocked-weep': { instrument: 'probe', within: TAPE },
  'no-flashing': { instrument: 'mirror', within: 0 },
  'low-flashing': { instrument: 'tape', within: TAPE },
  'short-flashing': { instrument: 'tape', within: TAPE },
  'no-end-dam': { instrument: 'tape', within: TAPE },
  'stale-mortar': { instrument: 'thermometer', within: 2 },
  'lean-mortar': { instrument: 'thermometer', within: 0.1 },
};

/** What was measured, where a check measures more than one thing. */
export interface Measured {
  readonly measured: number;
  readonly unit: string;
}

/** The largest bare area is counted in squares of 10 mm: two of them, or what rounding to a tenth of a square inch loses, mm². */
const BARE_AREA: Tolerance = { instrument: 'tape', within: 200 };
/** A strap wider than this was measured across, not through, mm. */
const THROUGH: Mm = 5;
/** Steel thicker than this is a leg, not a thickness, mm. */
const THICKEST: Mm = 25;

/**
 * How near a learner's reading must come to the finding's `measured`. Where a check measures one of several things, the finding says which: a share
 * or an area of a back, a strap's thickness or its width, an angle's thickness or its leg.
 */
export function toleranceOf(check: CheckId, found?: Measured): Tolerance {
  const usual = TOLERANCE[check];
  if (found === undefined) return usual;
  const { measured, unit } = found;
  if (unit === 'mm²') return BARE_AREA;
  if (check === 'thin-tie' && measured > THROUGH) return { instrument: 'tape', within: TAPE };
  if (check === 'weak-angle' && measured < THICKEST) return { instrument: 'joint-gauge', within: JOINT };
  return usual;
}
