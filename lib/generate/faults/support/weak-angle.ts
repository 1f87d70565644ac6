import { angleVerdict } from '../../../limits/bound';
import { limitOf } from '../../../limits/limits';
import { type Mm, snap } from '../../../units';
import type { Angle, Support, Wall } from '../../../wall/model';
import { type Fault, WITH_OPENING } from '../../fault';
import { NoRoom, type Spoiled, type SpoilInput } from '../../spoil-input';
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
  masonry: 'anchored',
  most: 3,
  tolerated: 0.95,
  spoil: (input) => {
    const { wall, rules, severity } = input;
    const lintel = lintelLeft(input);
    const opening = wall.openings.find(({ id }) => id === lintel.opening);
    if (opening === undefined) throw new NoRoom('no lintel left');
    const table = limitOf(rules, 'angle-size')?.bound;
    const at = { depth: wall.family.depth, storeys: wall.storeysAbove };
    if (severity < 1) return lightestThatServes(input, lintel, opening.width);
    const light =
      LIGHT_ANGLES.find((angle) => {
        if (table?.form !== 'angle-table') return severity < 2;
        const verdict = angleVerdict(table, angle, opening.width, at);
        return !verdict.passes && verdict.limit / verdict.measured >= Math.min(severity, 1.8);
      }) ?? LIGHT_ANGLES[LIGHT_ANGLES.length - 1];
    if (light === undefined) throw new NoRoom('no light angle');
    return withAngle(wall, lintel, light);
  },
};

function lightestThatServes({ wall, rules }: SpoilInput, lintel: Support, span: Mm): Spoiled {
  const table = limitOf(rules, 'angle-size')?.bound;
  if (table?.form !== 'angle-table') throw new NoRoom('no table');
  const at = { depth: wall.family.depth, storeys: wall.storeysAbove };
  const row = table.rows.find((each) => angleVerdict(table, each, span, at).passes);
  if (row === undefined) throw new NoRoom('no listed angle');
  const { vertical, horizontal, thickness } = row;
  return withAngle(wall, lintel, { vertical, horizontal, thickness });
}

function withAngle(wall: Wall, lintel: Support, angle: Angle): Spoiled {
  const changed = { ...lintel, angle, back: snap(lintel.front - angle.horizontal) };
  return { wall: replaceSupport(wall, lintel, [changed]), taken: supportSpot(lintel) };
}
