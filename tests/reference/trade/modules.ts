import { gaugeForCourses, heightOfCourses } from '../../../lib/trade/coursing';
import { inches, type Mm } from '../../../lib/units';

/** So many courses to so much height, bed joints and all. */
export interface Module {
  readonly courses: number;
  readonly height: Mm;
}

/** US modular brick: three courses to 8 in (BIA Technical Note 10). */
export const US_MODULAR: Module = { courses: 3, height: inches(8) };

/** Metric modular brick: three courses to 200 mm (GSA Metric Design Guide, PBS-PQ260, page 14: 201 mm, rounded to 200). */
export const METRIC_MODULAR: Module = { courses: 3, height: 200 };

/** Height of so many courses laid at the gauge that closes the module. Its units are of any height: the joint makes up for it. */
export function modularHeight(courses: number, module: Module): Mm {
  const unit = 40;
  return heightOfCourses(courses, unit, gaugeForCourses(module.height, module.courses, unit).joint);
}
