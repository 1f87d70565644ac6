import type { Limit } from '../limit';
import { atLeast, atMost, byClause, noted } from '../rows';
import { OBC } from './obc';

const BEFORE = { ...OBC, source: 'obc-2012', edition: 'Ontario Building Code 2012' } as const;

/** Masonry chimneys, from the code of 2012. Shown only. */
export const ONTARIO_CHIMNEYS: readonly Limit[] = [
  ...byClause(BEFORE, 'height and thickness', {
    'height of chimney flues': [
      atLeast('chimney-above-roof', 'Chimney flue, above the highest point where it meets the roof', 900),
      ...noted(
        'Near is within 3 m (10 ft), measured level.',
        atLeast('chimney-above-nearby', 'Chimney flue, above any roof or structure near it', 600),
      ),
    ],
    'lateral stability': noted(
      'And at least 400 mm (15 3/4 in) wide each way. Past either, the chimney is braced against the wind by design.',
      atMost('chimney-unbraced', 'Chimney without bracing, height above the roof', 3.6, 'm'),
    ),
  }),
  ...byClause(BEFORE, 'water', {
    'chimney caps': noted(
      'The cap is waterproof, slopes away from the liner and is parted from it; under a jointed cap lies a flashing.',
      atLeast('chimney-cap-drip', 'Chimney cap: drip, from the face of the chimney', 25),
    ),
    'extension of chimney liners': [
      atLeast('chimney-liner-least', 'Chimney liner, above the cap: at least', 50),
      atMost('chimney-liner-most', 'Chimney liner, above the cap: at most', 100),
    ],
  }),
];
