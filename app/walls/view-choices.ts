import type { LastLook } from '../../components/practice/review';
import type { Finding } from '../../lib/inspect/finding';
import { cutsOf, type View, viewsOf } from '../../lib/views/view';
import type { Wall } from '../../lib/wall/model';

/** A view as the reader chooses it. */
export interface ViewChoice {
  readonly value: string;
  readonly label: string;
}

/** The views of a wall by key: 'front', 'before-cover', 'cut:A-ledge', 'behind' (of the unit picked). */
export function viewChoices(wall: Wall): readonly ViewChoice[] {
  const kinds = viewsOf(wall);
  const several = wall.panels.length > 1;
  return [
    { value: 'front', label: 'Front' },
    ...cutsOf(wall).map(({ title, support }) => ({
      value: `cut:${support}`,
      label: cutLabel(title, several),
    })),
    ...(kinds.includes('before-cover') ? [{ value: 'before-cover', label: 'Before cover' }] : []),
    ...(kinds.includes('behind') ? [{ value: 'behind', label: 'Behind a unit' }] : []),
  ];
}

/** 'Over window, wall A' -> 'Cut over window': the panel is named only where there are several. */
function cutLabel(title: string, several: boolean): string {
  const name = several ? title.replace(', wall ', ' ') : title.replace(/, wall .*$/, '');
  return `Cut: ${name.toLowerCase().replace(/ ([a-z])$/, (panel) => panel.toUpperCase())}`;
}

export function viewOf(key: string, unit: string, wall: Wall): View {
  const cut = cutsOf(wall).find(({ support }) => key === `cut:${support}`);
  if (cut) return { kind: 'section', at: cut.at, support: cut.support };
  if (key === 'behind') return { kind: 'behind', unit };
  return key === 'before-cover' ? { kind: 'before-cover' } : { kind: 'front' };
}

/** The view in which a fault shows best. */
export function viewKeyFor({ check, parts }: Finding, wall: Wall): string {
  const cut = cutsOf(wall).find(({ support }) => parts.includes(support));
  switch (check) {
    case 'missing-back-mortar':
    case 'ring-buttered-back':
      return 'behind';
    case 'ties-too-far-apart':
    case 'no-tie-at-edge':
    case 'shallow-tie':
    case 'thin-tie':
      return 'before-cover';
    case 'overhang-too-far':
    case 'weak-angle':
    case 'no-lintel':
      return cut ? `cut:${cut.support}` : 'front';
    default:
      return 'front';
  }
}

/** What to look for once more before handing in, with the view for it. */
export function lastLooks(wall: Wall): readonly LastLook[] {
  const base = cutsOf(wall)[0];
  const joints = {
    family: 'Joints',
    question: 'Is each one full, and of an even thickness?',
    view: 'front',
  };
  const line = {
    family: 'Line',
    question: 'Is it level, plumb and flat? Do the perpends stay in line?',
    view: 'front',
  };
  const bond = { family: 'Bond', question: 'Is any piece too small?', view: 'front' };
  const mortar = { family: 'Mortar', question: 'Do the mixing tickets add up?', view: 'tickets' };
  if (wall.masonry === 'adhered') {
    const back = { family: 'Backs', question: 'Did you lift units here and there?', view: 'behind' };
    return [back, joints, line, bond, mortar];
  }
  return [
    {
      family: 'Support',
      question:
        'Does every part of the wall stand on something? Is there a lintel over each opening, long and strong enough?',
      view: base ? `cut:${base.support}` : 'front',
    },
    {
      family: 'Ties',
      question: 'Are they close enough, near the edges too, and deep enough?',
      view: 'before-cover',
    },
    joints,
    line,
    bond,
    mortar,
  ];
}
