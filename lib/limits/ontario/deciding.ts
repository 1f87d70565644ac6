import { type AngleLine, angleRows, VENEER_ANGLES } from '../canada/tables';
import type { Limit } from '../limit';
import { atLeast, atMost, byClause, noted } from '../rows';
import { OBC } from './obc';

/** The Ontario table goes on where the national one ends. */
const LONGER_ANGLES: readonly AngleLine[] = [
  [127, 89, 13, 3820, 3590, 3330],
  [152, 89, 11, 4060, 3820, 3540],
  [152, 89, 13, 4320, 4070, 3770],
  [152, 102, 13, 4370, 4120, 3820],
  [178, 102, 11, 4570, 4300, 3990],
  [178, 102, 13, 4870, 4590, 4250],
];

/** What the checks ask Ontario for, where its figure is not the national one. */
export const ONTARIO_DECIDING: readonly Limit[] = [
  ...byClause({ ...OBC, howSure: 'second-hand' }, 'joints', {
    '9.20.4.1.(2)': noted(
      'The tolerance here is 5 mm less and 10 mm more than 10 mm (the NBC has 5 mm both ways). It comes from one machine copy of the code: look it up before you rely on it.',
      atMost('bed-joint-most', 'Bed joint: greatest thickness', 20),
      atLeast('bed-joint-least', 'Bed joint: least thickness', 5),
      atMost('head-joint-most', 'Head joint: greatest width', 20),
      atLeast('head-joint-least', 'Head joint: least width', 5),
      atMost('first-bed-most', 'First bed joint, on the foundation: greatest thickness', 20),
      atLeast('first-bed-least', 'First bed joint, on the foundation: least thickness', 5),
    ),
  }),
  ...byClause(OBC, 'openings', {
    '9.20.5.2': noted(
      'Level, on masonry, concrete or steel. The national code asks for 90 mm.',
      atLeast('lintel-bearing', 'Steel lintel, bearing at each end', 150),
    ),
    'Table 9.20.5.2.-B': noted(
      'The longer leg stands up; the third column is for stone of 100 mm. The first five rows agree with the national table; the others were read in one machine copy and agree with a worked deflection.',
      atLeast(
        'angle-size',
        'Steel angle over an opening in veneer, by clear span and thickness of the veneer',
        {
          form: 'angle-table',
          caseBy: 'unit depth',
          rows: angleRows(['70', '90', '100'], [...VENEER_ANGLES, ...LONGER_ANGLES]),
        },
        'table',
      ),
    ),
  }),
];
