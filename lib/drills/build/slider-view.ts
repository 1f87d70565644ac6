import { cutsOf } from '../../views/view';
import type { Wall } from '../../wall/model';
import type { ShownSlider } from './laid-build';

/** The view in which a departure shows, and the unit to lift for it. */
export function viewOfSlider(
  { family, id, fitted }: ShownSlider,
  wall: Wall,
): { readonly view: string; readonly unit?: string } {
  switch (family) {
    case 'Ties':
      return { view: 'before-cover' };
    case 'Backs':
      return { view: 'behind', unit: fitted.at };
    case 'Support': {
      const cut = cutsOf(wall).find(({ support }) => support === fitted.at);
      // A cut shows how far it stands out; how far a lintel reaches shows before cover.
      return { view: id === 'overhang' && cut ? `cut:${cut.support}` : 'before-cover' };
    }
    case 'Line':
      if (id === 'lean') return { view: 'side:A' };
      return { view: id === 'gauge' || id === 'corner' ? 'front' : 'side-light' };
    case 'Mortar':
      return { view: 'tickets' };
    default:
      return { view: 'front' };
  }
}
