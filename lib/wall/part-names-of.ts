import type { Wall } from './model';
import { partsOf } from './parts';
import { partName } from './part-names';

/** Names the parts of a wall as a reader does. */
export function partNames(wall: Wall): (id: string) => string {
  const parts = partsOf(wall);
  return (id) => {
    const part = parts.get(id);
    return part ? partName(part, wall) : id;
  };
}
