import { cutsOf } from './view';
import type { Wall } from '../wall/model';

/** The drawings of a wall that go on a question sheet: what can be looked at without lifting a unit. `view` as parseView reads it. */
export function viewsOnPaper(wall: Wall): readonly { readonly view: string; readonly title: string }[] {
  return [
    { view: 'front', title: 'From in front' },
    ...cutsOf(wall).map(({ support, title }) => ({ view: `section:${support}`, title: `Cut: ${title}` })),
    ...(wall.masonry === 'anchored' ? [{ view: 'before-cover', title: 'Before cover: ties' }] : []),
  ];
}
