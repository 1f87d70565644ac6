import type { Wall } from '../wall/model';

/**
 * What can be looked at. A section cuts one support: the first that fits `at`, unless `support` names another. Where a lintel was
 * left out its opening may be named instead: the section is then cut through the head of that opening.
 */
export type View =
  | { readonly kind: 'front' }
  | { readonly kind: 'section'; readonly at: 'base' | 'lintel'; readonly support?: string }
  | { readonly kind: 'behind'; readonly unit: string }
  | { readonly kind: 'before-cover' };

/** One section that can be cut: through a ledge, or through the head of an opening (with its lintel, if it has one). */
export interface Cut {
  readonly at: 'base' | 'lintel';
  readonly panel: string;
  /** What `View.support` takes: a support, or an opening that has no lintel. */
  readonly support: string;
  /** Plain name for a list: "Base, wall A", "Over window, wall A". */
  readonly title: string;
}

/** Which views this wall has. Adhered walls hang on their backing: no ties to see before cover, and no section without supports. */
export function viewsOf(wall: Wall): readonly View['kind'][] {
  const anchored = wall.masonry === 'anchored';
  return [
    'front',
    ...(cutsOf(wall).length > 0 ? (['section'] as const) : []),
    'behind',
    ...(anchored ? (['before-cover'] as const) : []),
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

/** The cut a section view asks for; null when the wall has none such. */
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

/** A view that a wall has not, or a name that is no view: the message says what there is. */
export class ViewError extends Error {
  override name = 'ViewError';
}

/**
 * Reads `front`, `section` (the first there is), `section:A-lintel1`, `behind` (the first unit) or `behind:A12.5`, `before-cover`.
 * @throws ViewError for any other text, and for what this wall has not.
 */
export function parseView(wall: Wall, text: string): View {
  const [kind = '', named] = text.split(':');
  const known = viewsOf(wall);
  if (!known.some((each) => each === kind)) {
    throw new ViewError(`view: "${text}" is not a view of this wall; it has ${known.join(', ')}`);
  }
  if (kind === 'section') return parseSection(wall, named);
  if (kind === 'behind') {
    const unit = named === undefined ? wall.units[0] : wall.units.find(({ id }) => id === named);
    if (unit === undefined) throw new ViewError(`view: this wall has no unit "${named}"`);
    return { kind: 'behind', unit: unit.id };
  }
  return kind === 'front' ? { kind: 'front' } : { kind: 'before-cover' };
}

function parseSection(wall: Wall, named: string | undefined): View {
  const cuts = cutsOf(wall);
  const cut = named === undefined ? cuts[0] : cuts.find(({ support }) => support === named);
  if (cut === undefined) {
    throw new ViewError(
      `view: no section at "${named}"; there is ${cuts.map(({ support }) => support).join(', ')}`,
    );
  }
  return { kind: 'section', at: cut.at, support: cut.support };
}
