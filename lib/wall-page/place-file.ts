import type { Finding } from '../inspect/finding';

/** The wall as it was laid with its faults, or the same wall without them. */
export const SIDES = ['as-laid', 'sound'] as const;
export type Side = (typeof SIDES)[number];

/** Name of the picture of the place of a finding. A head joint has a stroke in its name, which no part of an address may have. */
export function placeFile({ check, parts }: Pick<Finding, 'check' | 'parts'>, side: Side): string {
  return `${check}.${(parts[0] ?? '').replaceAll('/', '_')}.${side}.svg`;
}
