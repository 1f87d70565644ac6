import type { Hazard, Reach } from '../inspect/finding';

/** What a reader can say to do about a place, the mildest first. `leave`: it looks wrong and is right. */
export const ACTS = ['leave', 'put right now', 'open up further', 'make safe and call'] as const;
export type Act = (typeof ACTS)[number];

/**
 * The right act for a fault. Danger comes before everything: what could fall is made safe and somebody competent is called, whoever
 * opens the wall up afterwards. Where one fault means more of them out of sight, the wall is opened up further. What lies in sight is
 * put right. No fault is left: a thing within its limits is no fault. Source: common practice.
 */
export function rightActOf(hazard: Hazard, reach: Reach): Act {
  if (hazard === 'could fall') return 'make safe and call';
  return reach === 'out of sight' ? 'open up further' : 'put right now';
}
