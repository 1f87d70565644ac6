import type { FaceBox } from '../../geometry/box';

/** What was measured at one place, to be drawn there as a dimension. Lengths in mm on the face of the panel. */
export interface FindingDimension {
  readonly number: number;
  /** Name of the check: it says what was measured. */
  readonly check: string;
  /** Ids of the parts concerned, the most telling first. */
  readonly parts: readonly string[];
  readonly region: FaceBox;
  readonly measured: number;
  /** 'mm', '%', 'mm per m' … */
  readonly unit: string;
  /** Name of the limit: a bed held against the mean of eight is not measured by its thickness. */
  readonly source?: { readonly limit: string };
}
