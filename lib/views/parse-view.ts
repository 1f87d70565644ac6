import type { Panel, Wall } from '../wall/model';
import { cutsOf, undersidesOf, type View, ViewError, viewsOf } from './view';

/**
 * Reads `front`, `side-section` (the first wall, cut at its middle) or `side-section:A,1200` (mm from the left), `section` (the first
 * there is) or `section:A-lintel1`, `above` or `above:A,5` (course), `below` or `below:A-lintel1`, `behind` (the first unit) or
 * `behind:A12.5`, `before-cover`, `tickets`.
 * @throws ViewError for any other text, and for a place that is not on this wall.
 */
export function parseView(wall: Wall, text: string): View {
  const [kind = '', named] = text.split(':');
  const known = viewsOf(wall);
  const wanted = known.find((each) => each === kind);
  switch (wanted) {
    case 'front':
    case 'before-cover':
    case 'tickets':
      return { kind: wanted };
    case 'section':
      return parseSection(wall, named);
    case 'side-section': {
      const { panel, number } = parsePlace(wall, named);
      const x = number ?? panel.length / 2;
      if (x >= 0 && x <= panel.length) return { kind: 'side-section', panel: panel.id, x };
      throw new ViewError(`view: wall ${panel.id} goes from 0 to ${panel.length} mm, ${x} is not on it`);
    }
    case 'above': {
      const { panel, number } = parsePlace(wall, named);
      const course = number ?? 1;
      if (Number.isInteger(course) && course >= 1 && course <= panel.courses) {
        return { kind: 'above', panel: panel.id, course };
      }
      throw new ViewError(`view: wall ${panel.id} has courses 1 to ${panel.courses}, no ${course}`);
    }
    case 'below': {
      const places = undersidesOf(wall).map(({ at }) => at);
      const at = named === undefined ? places[0] : places.find((each) => each === named);
      if (at !== undefined) return { kind: 'below', at };
      throw new ViewError(`view: nothing to look up at at "${named}"; there is ${places.join(', ')}`);
    }
    case 'behind': {
      const unit = named === undefined ? wall.units[0] : wall.units.find(({ id }) => id === named);
      if (unit !== undefined) return { kind: 'behind', unit: unit.id };
      throw new ViewError(`view: this wall has no unit "${named}"`);
    }
    default:
      throw new ViewError(`view: "${text}" is not a view of this wall; it has ${known.join(', ')}`);
  }
}

/** The text that parseView reads a view from. */
export function viewText(view: View): string {
  switch (view.kind) {
    case 'side-section':
      return `${view.kind}:${view.panel},${view.x}`;
    case 'above':
      return `${view.kind}:${view.panel},${view.course}`;
    case 'section':
      return view.support === undefined ? view.kind : `${view.kind}:${view.support}`;
    case 'below':
      return `${view.kind}:${view.at}`;
    case 'behind':
      return `${view.kind}:${view.unit}`;
    default:
      return view.kind;
  }
}

/** `A,1200`: a panel, and a number on it. */
function parsePlace(
  wall: Wall,
  named: string | undefined,
): { readonly panel: Panel; readonly number: number | null } {
  const [id, typed] = named?.split(',') ?? [];
  const panel = id === undefined ? wall.panels[0] : wall.panels.find((each) => each.id === id);
  if (panel === undefined) {
    throw new ViewError(`view: no wall "${id}"; there is ${wall.panels.map((each) => each.id).join(', ')}`);
  }
  if (typed === undefined) return { panel, number: null };
  const number = Number(typed);
  if (typed.trim() === '' || !Number.isFinite(number))
    throw new ViewError(`view: "${typed}" is not a number`);
  return { panel, number };
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

/** The drawings of a wall that go on a question sheet: what can be looked at without lifting a unit. `view` as parseView reads it. */
export function viewsOnPaper(wall: Wall): readonly { readonly view: string; readonly title: string }[] {
  return [
    { view: 'front', title: 'From in front' },
    ...cutsOf(wall).map(({ support, title }) => ({ view: `section:${support}`, title: `Cut: ${title}` })),
    ...(wall.masonry === 'anchored' ? [{ view: 'before-cover', title: 'Before cover: ties' }] : []),
  ];
}
