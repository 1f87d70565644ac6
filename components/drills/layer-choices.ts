import type { Layer } from '../../lib/views/pointing/targets';
import type { Choice } from '../ui/choice-bar';

/** What a tap takes hold of. */
export const LAYER_CHOICES: readonly Choice<Layer>[] = [
  { value: 'units', label: 'Units' },
  { value: 'joints', label: 'Joints' },
  { value: 'fixings', label: 'Ties and supports' },
];
