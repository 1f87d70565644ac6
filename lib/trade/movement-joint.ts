import type { Mm } from '../units';
import { refuseNotPositive } from './refusals';

/**
 * Distance between movement joints, mm: joint × the share the sealant can give ÷ the share the wall moves. Source: BIA Technical Note 18A,
 * S = w·e/0.09 with e in per cent; 0.0009 is its movement of clay brickwork. @throws RangeError unless all are above zero.
 */
export function movementJointSpacing(joint: Mm, sealantShare: number, movement: number): Mm {
  refuseNotPositive('joint', joint);
  refuseNotPositive('sealant share', sealantShare);
  refuseNotPositive('movement', movement);
  return (joint * sealantShare) / movement;
}

/** BIA Technical Note 18A: how much clay brickwork grows, as a share of its length. */
export const CLAY_MOVEMENT = 0.0009;
