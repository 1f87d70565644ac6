import type { PickedPart } from '../../components/wall-page/part-facts';
import type { Aim } from '../views/pointing/pick';
import type { Part } from '../wall/parts';
import { nearbyParts } from './nearby-parts';
import type { OpenWall } from './open-wall';

/** A part that was pointed to, with what else a fault there may be marked on; null for no part of this wall. */
export function pickedPart(
  { wall, parts, nameOf }: OpenWall,
  id: string,
  aim: Aim | null,
): PickedPart | null {
  const part = parts.get(id);
  if (!part) return null;
  const named = (each: Part) => ({ id: each.id, kind: each.kind, name: nameOf(each.id) });
  return { ...named(part), nearby: nearbyParts(part, aim, wall, parts).map(named) };
}
