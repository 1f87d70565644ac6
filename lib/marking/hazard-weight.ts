import type { Finding } from '../inspect/finding';

/**
 * What a fault counts in a wall's score, in whole numbers; a wall's weights are normalised to sum to 1.
 * The weights are ours: what can fall on somebody counts three times what is only unsightly.
 */
export const HAZARD_WEIGHT = {
  'could fall': 3,
  'lets water in': 2,
  looks: 1,
} as const satisfies Readonly<Record<Finding['hazard'], number>>;
