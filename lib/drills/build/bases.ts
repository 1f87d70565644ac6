import { WALL_KINDS, type WallKind } from '../../wall/model';
import { KIND_TITLES } from '../../wall-page/brief-words';

/** A wall to begin with. */
export interface BaseChoice {
  readonly id: string;
  readonly title: string;
  readonly kind: WallKind;
  readonly masonry: 'anchored' | 'adhered';
}

/** Every kind of wall that is tied back, and one that is stuck on. */
export const BASES: readonly [BaseChoice, ...BaseChoice[]] = [
  baseOf('plain-panel'),
  ...WALL_KINDS.filter((kind) => kind !== 'plain-panel').map(baseOf),
  {
    id: 'stuck-on',
    title: `${KIND_TITLES['plain-panel']}, stuck to its backing`,
    kind: 'plain-panel',
    masonry: 'adhered',
  },
];

function baseOf(kind: WallKind): BaseChoice {
  return { id: kind, title: KIND_TITLES[kind], kind, masonry: 'anchored' };
}
