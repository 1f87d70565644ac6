import { GAUGE, JOINT } from '../../../lib/drawing/brickwork';
import { cutColumn, SHEATHING, STUD_DEEP } from '../../../lib/drawing/cut';
import { ring } from '../../../lib/drawing/rings';
import { rectRing } from '../../../lib/geometry/polygon';
import { houseWall, solid, VENEER } from './pieces';
import { chalk, outlined, type Sketch, sketch } from './sketch';

const { face, ledge, frame } = VENEER;
const bed = (course: number) => ledge + course * GAUGE;
const FOOT = bed(1);
const HIGH = 500;

/** Words of what lies behind the brick, and of the steel that carries it. */
export const FRAMES: Readonly<Record<string, Sketch>> = {
  stud: sketch(
    900,
    [...houseWall(), outlined(rectRing(frame - SHEATHING - STUD_DEEP, FOOT, STUD_DEEP, HIGH - FOOT))],
    ['stud', [170, 300], [330, 290]],
    ['tie', [640, 370], [490, bed(4) + JOINT / 2]],
  ),
  sheathing: sketch(
    900,
    [...houseWall(), outlined(rectRing(frame - SHEATHING, FOOT, SHEATHING, HIGH - FOOT))],
    ['sheathing', [240, 330], [frame - SHEATHING / 2, 300]],
    ['brick', [640, 260], [face - 30, 230]],
  ),
  'water-barrier': sketch(
    900,
    [...houseWall(), chalk([frame + 2, FOOT], [frame + 2, HIGH])],
    ['water barrier', [610, 380], [frame + 2, 350]],
    ['sheathing', [240, 260], [frame - SHEATHING / 2, 240]],
  ),
  'steel-angle': sketch(
    700,
    [
      solid(ring(300, 130, 392, 130, 392, 139, 309, 139, 309, 222, 300, 222), 'url:cut-steel'),
      ...cutColumn(404, 139, 3),
    ],
    ['upright leg', [190, 260], [303, 200]],
    ['lower leg', [460, 80], [370, 133]],
    ['brick', [500, 250], [400, 230]],
  ),
};
