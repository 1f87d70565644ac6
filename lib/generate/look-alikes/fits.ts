import { limitOf } from '../../limits/limits';
import type { Plan } from '../plan';
import type { LookAlike } from './look-alike';

/** Look-alikes that a wall of this kind can carry; two of one group shut each other out (the first drawn stays). */
export function lookAlikesFor(
  looks: Pick<Plan, 'kind' | 'masonry' | 'rules' | 'bond' | 'thinBed'>,
): readonly LookAlike[] {
  const { kind, masonry, rules, bond, thinBed } = looks;
  const always: LookAlike[] = [
    'textured-units',
    'hairline-cracks',
    'efflorescence',
    'chipped-corners',
    'mortar-smears',
    'handmade-size-range',
    'hot-day-mortar',
  ];
  if (masonry === 'adhered') return always;
  const spanned = kind === 'window-panel' || kind === 'door-corner';
  const ownFirstBed = limitOf(rules, 'first-bed-most')?.bound;
  return [
    ...always,
    'weep-openings',
    'overhang-within-a-third',
    ...(kind === 'gable-end' ? [] : (['projecting-pattern'] as const)),
    ...(spanned ? (['hidden-angle'] as const) : []),
    // Quarter pieces come at jambs only, never at an end; a third bond has closers of its own there.
    ...(spanned && bond === 'running' ? (['closers-at-reveal'] as const) : []),
    ...(thinBed ? [] : (['raked-on-thick-veneer'] as const)),
    ...(ownFirstBed?.form === 'number' && ownFirstBed.value > ROOMY_FIRST_BED
      ? (['thick-first-bed'] as const)
      : []),
  ];
}

/** A first bed of about 16 mm is a look-alike only where its own limit lies well beyond, mm. */
const ROOMY_FIRST_BED = 18;
