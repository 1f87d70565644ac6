import { inches } from '../../units';
import type { Limit } from '../limit';
import { atLeast, byClause, exactly, noted, PRESENT } from '../rows';
import { IRC } from './irc';

/** Masonry chimneys: shown only. */
export const UNITED_STATES_CHIMNEYS: readonly Limit[] = [
  ...byClause(IRC, 'height and thickness', {
    'R1003.9': [
      atLeast(
        'chimney-above-roof',
        'Chimney, above the highest point where it passes the roof',
        inches(0, 3),
      ),
      ...noted(
        'Near is within 10 ft (3.05 m).',
        atLeast('chimney-above-nearby', 'Chimney, above any part of a building near it', inches(0, 2)),
      ),
    ],
  }),
  ...byClause(IRC, 'water', {
    'R1003.9.1': noted(
      'Of concrete, metal or stone, sloped, with a drip edge and a sealed break round the flue liner.',
      exactly('chimney-cap', 'Cap on a masonry chimney', PRESENT, 'there or not'),
    ),
  }),
];
