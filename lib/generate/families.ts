import type { RuleSetId } from '../limits/limit';
import type { Mm } from '../units';
import type { UnitFamily } from '../wall/model';

/** A unit family with the joint and gauge it is set out to; all on the grid of eighths. */
export interface SettingOut {
  readonly family: UnitFamily;
  readonly joint: Mm;
  readonly gauge: Mm;
}

/** Metric modular, 190 × 57 × 90: three courses to 200 mm (GSA Metric Design Guide); 66.67 snapped to 66.75. */
const METRIC: SettingOut = {
  family: { name: 'Metric modular brick', length: 190, height: 57, depth: 90 },
  joint: 10,
  gauge: 66.75,
};
/** The same face on a 75 mm bed: the thinnest anchored veneer of NBC 9.20.6.4. */
const METRIC_THIN_BED: SettingOut = {
  ...METRIC,
  family: { name: 'Metric modular brick, 75 mm bed', length: 190, height: 57, depth: 75 },
};
/** US modular, 7 5/8 × 2 1/4 × 3 5/8 in: three courses to 8 in (BIA Technical Note 10). */
const US_MODULAR: SettingOut = {
  family: { name: 'US modular brick', length: 193.625, height: 57.125, depth: 92.125 },
  joint: 9.625,
  gauge: 67.75,
};
/** UK, 215 × 65 × 102.5: four courses to 300 mm (BS EN 771-1 co-ordinating size 225 × 112.5 × 75). */
const UK: SettingOut = {
  family: { name: 'UK standard brick', length: 215, height: 65, depth: 102.5 },
  joint: 10,
  gauge: 75,
};

const BY_RULES: Readonly<Record<RuleSetId, SettingOut>> = {
  canada: METRIC,
  ontario: METRIC,
  'united-states': US_MODULAR,
  'united-kingdom': UK,
  'good-practice': METRIC,
};

/** A slip of brick stuck to the wall: the face of the local brick, 20 mm thick (common practice). */
const THIN_DEPTH = 20;

/** The units a wall is built of: the brick of the place; thin slips when adhered; a 75 mm bed when `thinBed`. */
export function settingOutFor(
  rules: RuleSetId,
  masonry: 'anchored' | 'adhered',
  thinBed: boolean,
): SettingOut {
  if (masonry === 'adhered') {
    const local = BY_RULES[rules];
    return {
      ...local,
      family: { ...local.family, name: `${local.family.name}, thin slip`, depth: THIN_DEPTH },
    };
  }
  return thinBed ? METRIC_THIN_BED : BY_RULES[rules];
}
