import { angleVerdict } from '../../../limits/bound';
import { limitOf } from '../../../limits/limits';
import { snap } from '../../../units';
import type { Angle } from '../../../wall/model';
import { type Fault, WITH_OPENING } from '../../fault';
import { NoRoom } from '../../spoil-input';
import { lintelLeft, replaceSupport, supportSpot } from './support-changes';

/** Angles a yard has lying about that are too small for veneer, largest first (stock sizes, common practice). */
const LIGHT_ANGLES: readonly Angle[] = [
  { vertical: 64, horizontal: 64, thickness: 4.8 },
  { vertical: 51, horizontal: 51, thickness: 4.8 },
  { vertical: 51, horizontal: 38, thickness: 3.2 },
];

/** Puts in an angle that no table allows for the opening; its toe stays where it was. */
export const weakAngle: Fault = {
  id: 'weak-angle',
  kinds: WITH_OPENING,
  masonry: ['anchored'],
  most: 3,
  spoil: (input) => {
    const { wall, rules, severity } = input;
    const lintel = lintelLeft(input);
    const opening = wall.openings.find(({ id }) => id === lintel.opening);
    if (opening === undefined) throw new NoRoom('no lintel left');
    const table = limitOf(rules, 'angle-size')?.bound;
    const at = { depth: wall.family.depth, storeys: wall.storeysAbove };
    const light =
      LIGHT_ANGLES.find((angle) => {
        if (table?.form !== 'angle-table') return severity < 2;
        const verdict = angleVerdict(table, angle, opening.width, at);
        return !verdict.passes && verdict.limit / verdict.measured >= Math.min(severity, 1.8);
      }) ?? LIGHT_ANGLES[LIGHT_ANGLES.length - 1];
    if (light === undefined) throw new NoRoom('no light angle');
    const weak = { ...lintel, angle: light, back: snap(lintel.front - light.horizontal) };
    return { wall: replaceSupport(wall, lintel, [weak]), taken: supportSpot(lintel) };
  },
};
