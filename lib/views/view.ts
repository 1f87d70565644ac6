import type { Mm } from '../units';
import type { Wall } from '../wall/model';

/**
 * What can be looked at. A section cuts one support: the first that fits `at`, unless `support` names another. Where a lintel was
 * left out its opening may be named instead: the section is then cut through the head of that opening.
 */
export type View =
  | { readonly kind: 'front' }
  | { readonly kind: 'section'; readonly at: 'base' | 'lintel'; readonly support?: string }
  | { readonly kind: 'side-section'; readonly panel: string; readonly x: Mm }
  | { readonly kind: 'above'; readonly panel: string; readonly course: number }
  /** From below along the bottom edge of a panel, or up at the head of an opening: `at` is the panel, the lintel, or an opening without one. */
  | { readonly kind: 'below'; readonly at: string }
  | { readonly kind: 'behind'; readonly unit: string }
  | { readonly kind: 'before-cover' }
  | { readonly kind: 'tickets' };

/** One section that can be cut: through a ledge, or through the head of an opening (with its lintel, if it has one). */
export interface Cut {
  readonly at: 'base' | 'lintel';
  readonly panel: string;
  /** What `View.support` takes: a support, or an opening that has no lintel. */
  readonly support: string;
  /** Plain name for a list: "Base, wall A", "Over window, wall A". */
  readonly title: string;
}

/**
 * Which views this wall has, in the order a competent person takes them. Adhered walls hang on their backing: no ties to see before
 * cover, nothing to see from below, and no section without supports.
 */
export function viewsOf(wall: Wall): readonly View['kind'][] {
  const anchored = wall.masonry === 'anchored';
  return [
    'front',
    'side-section',
    ...(cutsOf(wall).length > 0 ? (['section'] as const) : []),
    'above',
    ...(anchored ? (['below'] as const) : []),
    'behind',
    ...(anchored ? (['before-cover'] as const) : []),
    ...(wall.batches.length > 0 ? (['tickets'] as const) : []),
  ];
}

/** Every section that can be cut through a wall: bases first, one a ledge, then heads of openings. */
export function cutsOf(wall: Wall): readonly Cut[] {
  if (wall.supports.length === 0) return [];
  const bases = wall.panels.flatMap((panel): readonly Cut[] =>
    wall.supports
      .filter((support) => support.panel === panel.id && support.kind === 'ledge')
      .map((ledge, index): Cut => {
        const end = ledge.fromX + ledge.toX > panel.length ? 'right' : 'left';
        const place = index === 0 ? 'Base' : `Base at ${end} end`;
        return { at: 'base', panel: panel.id, support: ledge.id, title: `${place}, wall ${panel.id}` };
      }),
  );
  const heads = wall.openings.map((opening): Cut => {
    const lintel = wall.supports.find((support) => support.opening === opening.id);
    return {
      at: 'lintel',
      panel: opening.panel,
      support: lintel?.id ?? opening.id,
      title: `Over ${opening.kind}, wall ${opening.panel}`,
    };
  });
  return [...bases, ...heads];
}

/** A place to look up at from below. */
export interface Underside {
  readonly at: string;
  readonly panel: string;
  /** "Bottom edge, wall A", "Over window, wall A". */
  readonly title: string;
}

/** Every place to look up at: bottom edges first, then heads of openings. */
export function undersidesOf(wall: Wall): readonly Underside[] {
  if (wall.masonry === 'adhered') return [];
  const edges = wall.panels.map(({ id }) => ({ at: id, panel: id, title: `Bottom edge, wall ${id}` }));
  const heads = wall.openings.map(({ id, kind, panel }) => ({
    at: wall.supports.find(({ opening }) => opening === id)?.id ?? id,
    panel,
    title: `Over ${kind}, wall ${panel}`,
  }));
  return [...edges, ...heads];
}

/** The cut a section view asks for; null if the wall has no such cut. */
export function cutOf(
  wall: Wall,
  view: { readonly at: 'base' | 'lintel'; readonly support?: string },
): Cut | null {
  const fitting = cutsOf(wall).filter(({ at }) => at === view.at);
  const named = wall.supports.find(({ id }) => id === view.support);
  return (
    fitting.find(({ support }) => support === view.support) ??
    fitting.find(({ panel }) => panel === named?.panel) ??
    (view.support === undefined ? fitting[0] : undefined) ??
    null
  );
}

/** The wall does not have this view, or no view has this name. The message says which views there are. */
export class ViewError extends Error {
  override name = 'ViewError';
}
