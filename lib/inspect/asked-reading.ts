import type { CheckId } from './finding';

/** What a reader measures for a fault: the quantity of its finding, in plain words, and its unit. */
export interface AskedReading {
  readonly what: string;
  readonly unit: '%' | 'mm' | 'mm per 4 courses' | 'mm per m' | 'minutes' | 'volumes' | 'there or not';
}

const BACK: AskedReading = { what: 'Share of the back that is covered, at the worst unit', unit: '%' };
const JOINT: AskedReading = {
  what: 'Thickness of the joint; where a bed is held against the mean of eight, how far it is off that mean',
  unit: 'mm',
};

/** As each check measures (DEVELOPERS.md). A back that fails by its largest bare patch alone is not asked: few would count it. */
export const ASKED_READING: Readonly<Record<CheckId, AskedReading>> = {
  'missing-back-mortar': BACK,
  'ring-buttered-back': BACK,
  'tapering-bed': { what: 'Difference between the two ends of the bed', unit: 'mm' },
  'thick-joint': JOINT,
  'thin-joint': JOINT,
  'open-head': { what: 'Share of the joint that is filled', unit: '%' },
  'raked-thin-veneer': { what: 'How far the mortar lies back', unit: 'mm' },
  'course-off-level': { what: 'Drop from end to end of the course', unit: 'mm' },
  'gauge-drift': { what: 'Gain or loss over four courses', unit: 'mm per 4 courses' },
  'perpend-drift': { what: 'How far a line of head joints wanders', unit: 'mm' },
  'bulge-or-hollow': { what: 'Deepest place, off the plane of the face', unit: 'mm' },
  'out-of-plumb': { what: 'Lean, over the height the limit names', unit: 'mm' },
  'twisted-unit': { what: 'One end proud of the other', unit: 'mm' },
  'proud-unit': { what: 'How far the face stands out or back from its neighbours', unit: 'mm' },
  'corner-not-square': { what: 'Off the square line, 1 m along the return', unit: 'mm per m' },
  'sliver-piece': { what: 'Length of the piece', unit: 'mm' },
  'overhang-too-far': { what: 'Overhang past the support', unit: 'mm' },
  'no-bearing-return': { what: 'Share of the bottom course that stands on something', unit: '%' },
  'short-lintel-bearing': { what: 'Bearing at the shorter end', unit: 'mm' },
  'no-lintel': { what: 'Lintel', unit: 'there or not' },
  'weak-angle': { what: 'The size that is too small', unit: 'mm' },
  'ties-too-far-apart': { what: 'Widest gap between ties', unit: 'mm' },
  'no-tie-at-edge': { what: 'Edge to the nearest tie, or the gap along the edge', unit: 'mm' },
  'shallow-tie': { what: 'How far the tie reaches in', unit: 'mm' },
  'thin-tie': { what: 'Thickness or width that is too small', unit: 'mm' },
  'stale-mortar': { what: 'Minutes from mixing to the last use', unit: 'minutes' },
  'lean-mortar': { what: 'Volumes of sand to one of cement and lime', unit: 'volumes' },
};
