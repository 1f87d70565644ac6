import type { Finding } from '../inspect/finding';
import { cutsOf, undersidesOf, type View, viewsOf } from '../views/view';
import type { Wall } from '../wall/model';

/** A view as the reader chooses it: first the look, then the place, where a look has several. */
export interface ViewChoice {
  readonly value: string;
  readonly look: string;
  /** The place within the look. */
  readonly label: string;
}

/**
 * The views of a wall in the order a competent person takes them, by key: 'afar', 'front', 'side-light', 'side:A', 'cut:A-ledge',
 * 'above:A', 'below:A', 'behind' (of the unit picked), 'before-cover', 'tickets'. The first three are the front, from another
 * distance or in another light.
 */
export function viewChoices(wall: Wall): readonly ViewChoice[] {
  const kinds = viewsOf(wall);
  const several = wall.panels.length > 1;
  const named = (title: string) => (several ? title : (title.split(', wall ')[0] ?? title));
  const panels = wall.panels.map(({ id }) => id);
  return [
    { value: 'afar', look: 'From afar', label: '' },
    { value: 'front', look: 'Up close', label: '' },
    { value: 'side-light', look: 'Side light', label: '' },
    ...panels.map((id) => ({
      value: `side:${id}`,
      look: 'From the side',
      label: several ? `Wall ${id}` : 'Whole height',
    })),
    ...cutsOf(wall).map(({ title, support }) => ({
      value: `cut:${support}`,
      look: 'From the side',
      label: named(title),
    })),
    ...panels.map((id) => ({ value: `above:${id}`, look: 'From above', label: `Wall ${id}` })),
    ...undersidesOf(wall).map(({ at, title }) => ({
      value: `below:${at}`,
      look: 'From below',
      label: named(title),
    })),
    ...(kinds.includes('behind') ? [{ value: 'behind', look: 'Behind a unit', label: '' }] : []),
    ...(kinds.includes('before-cover') ? [{ value: 'before-cover', look: 'Before cover', label: '' }] : []),
    ...(kinds.includes('tickets') ? [{ value: 'tickets', look: 'Mixing tickets', label: '' }] : []),
  ];
}

/** The view of a key; a cut and a course are in the middle until the reader moves them. */
export function viewOf(key: string, unit: string, wall: Wall): View {
  const [kind, place = ''] = key.split(':');
  const cut = cutsOf(wall).find(({ support }) => key === `cut:${support}`);
  if (cut) return { kind: 'section', at: cut.at, support: cut.support };
  if (kind === 'behind') return { kind: 'behind', unit };
  if (kind === 'below') return { kind: 'below', at: place };
  const panel = wall.panels.find(({ id }) => id === place);
  if (panel && kind === 'side') {
    return { kind: 'side-section', panel: panel.id, x: Math.round(panel.length / 50) * 25 };
  }
  if (panel && kind === 'above') {
    return { kind: 'above', panel: panel.id, course: Math.ceil(panel.courses / 2) };
  }
  return key === 'before-cover' || key === 'tickets' ? { kind: key } : { kind: 'front' };
}

/** The view in which a fault shows best. */
export function viewKeyFor(
  { check, parts, region }: Pick<Finding, 'check' | 'parts' | 'region'>,
  wall: Wall,
): string {
  const cut = cutsOf(wall).find(({ support }) => parts.some((part) => part === support));
  switch (check) {
    case 'missing-back-mortar':
    case 'ring-buttered-back':
      return 'behind';
    case 'ties-too-far-apart':
    case 'no-tie-at-edge':
    case 'shallow-tie':
    case 'tie-near-face':
    case 'thin-tie':
      return 'before-cover';
    case 'stale-mortar':
    case 'lean-mortar':
      return 'tickets';
    case 'overhang-too-far':
    case 'short-lintel-bearing':
    case 'weak-angle':
    case 'no-lintel':
    case 'no-flashing':
    case 'low-flashing':
    case 'short-flashing':
    case 'no-end-dam':
      return cut ? `cut:${cut.support}` : 'front';
    case 'no-bearing-return':
      return `below:${region.panel}`;
    case 'proud-unit':
    case 'twisted-unit':
    case 'bulge-or-hollow':
      return 'side-light';
    default:
      return 'front';
  }
}
