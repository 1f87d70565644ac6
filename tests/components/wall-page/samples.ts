import type { FaultChoice } from '../../../lib/wall-page/fault-choices';
import type { PickedPart } from '../../../lib/wall-page/nearby-parts';

/** Three faults marked on different kinds of part, and a unit with what is around it: invented, for the tests of the bench. */
export const FAULTS: readonly FaultChoice[] = [
  {
    id: 'twisted-unit',
    name: 'Twisted unit',
    looksLike: 'One end stands out.',
    whereToLook: 'Front.',
    family: 'Line',
    markedOn: ['unit'],
    asks: { what: 'One end proud of the other', unit: 'mm' },
  },
  {
    id: 'thick-joint',
    name: 'Joint too thick',
    looksLike: 'A wide joint.',
    whereToLook: 'Front.',
    family: 'Joints',
    markedOn: ['bed', 'head'],
    asks: { what: 'Thickness', unit: 'mm' },
  },
  {
    id: 'out-of-plumb',
    name: 'Out of plumb',
    looksLike: 'The face leans.',
    whereToLook: 'Front.',
    family: 'Line',
    markedOn: ['panel'],
    asks: { what: 'Lean', unit: 'mm' },
  },
];

export const UNIT: PickedPart = {
  id: 'A3.2',
  kind: 'unit',
  name: 'Course 3, unit 2',
  nearby: [
    { id: 'A3.2-bed', kind: 'bed', name: 'Bed joint under unit 2, course 3' },
    { id: 'A3.1/2', kind: 'head', name: 'Head joint between units 1 and 2, course 3' },
    { id: 'A3', kind: 'course', name: 'The whole of course 3' },
    { id: 'A', kind: 'panel', name: 'The whole panel' },
  ],
};

/** Names only, in the order given. */
export function findByName(words: string): readonly FaultChoice['id'][] {
  return FAULTS.filter(({ name }) => name.toLowerCase().includes(words.toLowerCase())).map(({ id }) => id);
}
