import type { CheckId, Hazard } from './finding';

/** What kind of part a fault is marked on. A mark on any part of a panel or course is taken for the whole of it when the fault is that wide. */
export type Scope = 'unit' | 'joint' | 'course' | 'panel' | 'corner' | 'edge' | 'support' | 'opening' | 'tie' | 'batch';

/** One row of the fault catalogue; texts in plain words, our own. */
export interface CatalogueRow {
  readonly name: string;
  readonly hazard: Hazard;
  readonly scope: Scope;
}

export const CATALOGUE: Readonly<Record<CheckId, CatalogueRow>> = {
  'missing-back-mortar': { name: 'Missing back mortar', hazard: 'could fall', scope: 'unit' },
  'ring-buttered-back': { name: 'Ring-buttered back', hazard: 'could fall', scope: 'unit' },
  'tapering-bed': { name: 'Bed joint tapers', hazard: 'looks', scope: 'joint' },
  'thick-joint': { name: 'Joint too thick', hazard: 'looks', scope: 'joint' },
  'thin-joint': { name: 'Joint too thin', hazard: 'lets water in', scope: 'joint' },
  'open-head': { name: 'Open head joint', hazard: 'lets water in', scope: 'joint' },
  'raked-thin-veneer': { name: 'Raked joints on thin veneer', hazard: 'lets water in', scope: 'panel' },
  'course-off-level': { name: 'Course off level', hazard: 'looks', scope: 'course' },
  'gauge-drift': { name: 'Gauge drifts', hazard: 'looks', scope: 'panel' },
  'perpend-drift': { name: 'Perpends drift', hazard: 'looks', scope: 'joint' },
  'bulge-or-hollow': { name: 'Bulge or hollow', hazard: 'looks', scope: 'panel' },
  'out-of-plumb': { name: 'Out of plumb', hazard: 'looks', scope: 'panel' },
  'twisted-unit': { name: 'Twisted unit', hazard: 'looks', scope: 'unit' },
  'proud-unit': { name: 'Unit proud or set back', hazard: 'looks', scope: 'unit' },
  'corner-not-square': { name: 'Corner not square', hazard: 'looks', scope: 'corner' },
  'sliver-piece': { name: 'Sliver', hazard: 'lets water in', scope: 'unit' },
  'overhang-too-far': { name: 'Overhangs too far', hazard: 'could fall', scope: 'support' },
  'no-bearing-return': { name: 'No bearing under part of the wall', hazard: 'could fall', scope: 'support' },
  'short-lintel-bearing': { name: 'Lintel bearing too short', hazard: 'could fall', scope: 'support' },
  'no-lintel': { name: 'No lintel', hazard: 'could fall', scope: 'opening' },
  'weak-angle': { name: 'Angle too small', hazard: 'could fall', scope: 'support' },
  'ties-too-far-apart': { name: 'Ties too far apart', hazard: 'could fall', scope: 'panel' },
  'no-tie-at-edge': { name: 'No tie at the edge', hazard: 'could fall', scope: 'edge' },
  'shallow-tie': { name: 'Tie not deep enough', hazard: 'could fall', scope: 'tie' },
  'thin-tie': { name: 'Tie too thin', hazard: 'could fall', scope: 'tie' },
  'stale-mortar': { name: 'Mortar used too late', hazard: 'lets water in', scope: 'batch' },
  'lean-mortar': { name: 'Too much sand in the mortar', hazard: 'lets water in', scope: 'batch' },
};
