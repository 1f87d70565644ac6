import { type AngleLine, angleRows } from '../canada/tables';
import type { Limit } from '../limit';
import { atLeast, byClause, noted } from '../rows';
import { OBC } from './obc';

/** The printed table gives an angle for each span; turned round here to the longest span of each angle. */
const LOOSE_ANGLES: readonly AngleLine[] = [
  [89, 89, 6.4, 1200, 0],
  [89, 89, 7.9, 1500, 0],
  [102, 89, 7.9, 2100, 0],
  [127, 89, 7.9, 2400, 1500],
  [127, 89, 11, 2700, 0],
  [127, 127, 7.9, 0, 2400],
  [127, 127, 11, 0, 2700],
  [127, 127, 13, 0, 3000],
  [152, 102, 11, 3000, 0],
];

/** Other figures of its own; no check asks for them. */
export const ONTARIO_SHOWN: readonly Limit[] = [
  ...byClause(OBC, 'openings', {
    'Table 9.20.5.2.-A': noted(
      'For walls of masonry, not veneer on a wood frame. The table is worked to 1/700 of the span.',
      atLeast(
        'loose-angle-size',
        'Outer steel angle of a masonry wall, without floor load, by clear span',
        {
          form: 'angle-table',
          caseBy: 'unit depth',
          rows: angleRows(['100 mm brick', '100 mm stone and 50 mm facing'], LOOSE_ANGLES),
        },
        'table',
      ),
    ),
  }),
  ...byClause(OBC, 'height and thickness', {
    '9.20.6.4.(1)': atLeast('veneer-thickness', 'Veneer on a bearing support, thickness of solid units', 70),
  }),
];
